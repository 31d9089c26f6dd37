// Classic script, since pages opened from a folder can load neither modules nor data. Without it every page still reads.
(function () {
  "use strict";
  var limit = 100;
  var box = document.getElementById("find-box");
  var words = document.getElementById("find-words");
  var count = document.getElementById("find-count");
  var results = document.getElementById("find-results");
  var entries = null;
  var asked = false;

  box.hidden = false;
  words.addEventListener("focus", load);
  words.addEventListener("input", show);

  // The index is large: it is read when somebody is about to search.
  function load() {
    if (asked) return;
    asked = true;
    var script = document.createElement("script");
    script.src = words.dataset.index;
    script.onload = function () {
      var last = -1;
      entries = window.findIndex.entries.map(function (entry) {
        var page = window.findIndex.pages[entry[0]];
        var whole = entry[0] !== last;
        last = entry[0];
        // The first entry of a page is the page itself; the others are places on it, or names of what it is about.
        return {
          page: page,
          whole: whole,
          anchor: entry[1],
          text: entry[2],
          title: fold(page[1]),
          own: fold(entry[2]),
        };
      });
      show();
    };
    script.onerror = function () {
      count.textContent = "The index could not be read; the list below names every page.";
    };
    document.head.append(script);
  }

  function fold(text) {
    return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  }

  function show() {
    var wanted = fold(words.value).split(/\s+/).filter(Boolean);
    if (entries === null || wanted.length === 0) {
      results.replaceChildren();
      count.textContent = "";
      return;
    }
    var found = entries.filter(function (entry) {
      // A place that only its page's title speaks of is found with the page.
      var own = entry.whole;
      return (
        wanted.every(function (word) {
          var here = entry.own.includes(word);
          own = own || here;
          return here || entry.title.includes(word);
        }) && own
      );
    });
    found = ranked(found, wanted);
    results.replaceChildren.apply(results, found.slice(0, limit).map(item));
    count.textContent =
      found.length === 0
        ? "Nothing found."
        : found.length > limit
          ? "The first " + limit + " of " + found.length + " places."
          : found.length === 1
            ? "One place."
            : found.length + " places.";
  }

  // Whole words stand before parts of words, what bears the name before what names it.
  function ranked(found, wanted) {
    function holds(text) {
      var words = text.split(/[\s,;:()]+/);
      return wanted.every(function (word) {
        return words.includes(word);
      });
    }
    var ranks = [[], [], [], []];
    found.forEach(function (entry) {
      var named = entry.anchor === "" && !entry.whole && holds(entry.own);
      var rank = entry.whole && holds(entry.title) ? 0 : named ? 1 : holds(entry.title + " " + entry.own) ? 2 : 3;
      ranks[rank].push(entry);
    });
    return [].concat.apply([], ranks);
  }

  function item(entry) {
    var li = document.createElement("li");
    var link = document.createElement("a");
    link.href = entry.page[0] + (entry.anchor === "" ? "" : "#" + encodeURIComponent(entry.anchor));
    link.textContent = entry.anchor === "" ? entry.page[1] : entry.text;
    li.append(link);
    var about = document.createElement("span");
    about.className = "soft";
    about.textContent = entry.anchor === "" ? entry.text : entry.page[1];
    if (about.textContent !== "") li.append(" ", about);
    return li;
  }
})();
