"""Writes the six workbooks of the shop, and its maps, from the receiver's records. Run by hand; no test needs it.

Each tab says what the shop calls things: a heading, the field it stands for, and how the shop writes the value. The three
writers are openpyxl, XlsxWriter and LibreOffice Calc, so that the bytes are nobody's of ours.
"""
import glob, json, os, re, subprocess, sys, tempfile
from datetime import date
import openpyxl, xlsxwriter
from openpyxl.styles import Font

HERE = os.path.dirname(os.path.abspath(__file__))
DEMO = os.path.join(HERE, "..", "..", "demo-data")


def load(folder):
    found = {}
    for file in glob.glob(folder + "/**/*.json", recursive=True):
        if "/files/" in file or "/imports/" in file:
            continue
        whole = json.load(open(file))
        for record in whole.get("records", [whole]) if "kind" in whole else []:
            found.setdefault(whole["kind"], {})[record["id"]] = record
    return found


def records(kind, *ids):
    own = BOOK[kind]
    return [own[one] for one in (ids or sorted(own))]


def scan_of(original):
    """How the shop calls a scan: its file's name."""
    return os.path.splitext(os.path.basename(BOOK["original"][original]["path"]))[0]


class Col:
    def __init__(self, heading, to=None, how=None, form=None, split=None, words=None, nth=None, fn=None, unit=None, first=False, asshown=False):
        self.__dict__.update(locals())

    def entry(self):
        made = {"to": self.to}
        for key in ("unit", "form", "split"):
            if getattr(self, key):
                made[key] = getattr(self, key)
        if self.words:
            made["words"] = self.words
        if self.asshown:
            made["digits"] = "as shown"
        return made


def steps(path):
    for name, each, key, value in re.findall(r'([A-Za-z]+)(\[\])?(?:\[([a-z]+)="([^"]*)"\])?\.?', path):
        yield name, bool(each), key, value


def value_at(record, path, rows):
    """The value at a path of a map; rows says which row of each list is meant."""
    here, trail = record, ""
    for name, each, key, value in steps(path):
        trail = f"{trail}.{name}" if trail else name
        here = here.get(name) if isinstance(here, dict) else None
        if here is None:
            return None
        if each:
            trail += "[]"
            if trail in rows:
                here = here[rows[trail]] if rows[trail] < len(here) else None
        elif key:
            here = next((row for row in here if str(row.get(key)) == value), None)
    return here


def expand(record, lists):
    """One set of rows for each row of the sheet."""
    if not lists:
        return [{}]
    first, *rest = lists
    out = []
    items = value_at(record, first[:-2], {})
    for index in range(len(items or [])):
        inner = rest and len((items[index] or {}).get(rest[0].split("[].")[1][:-2], []))
        for deeper in range(max(1, inner or 0)):
            rows = {first: index}
            if rest:
                rows[rest[0]] = deeper
            out.append((rows, deeper > 0))
    return out


def shop_value(value, col, back):
    """As the shop writes it: decimal commas, days first, its own words."""
    if value is None:
        return None
    if isinstance(value, list):
        if col.nth is not None:
            return shop_value(value[col.nth] if col.nth < len(value) else None, col, back)
        return f"{col.split} ".join(str(shop_value(one, col, back)) for one in value)
    if isinstance(value, bool):
        value = "yes" if value else "no"
    if isinstance(value, int):
        return value
    if col.how == "firm":
        return value.capitalize()
    if col.how == "bare":
        # "document:DOC-03" is what the program calls it.
        return value.split(":")[-1]
    for word, meaning in {**back, **(col.words or {})}.items():
        if meaning == value and word:
            return word
    found = re.fullmatch(r"(\d{4})-(\d\d)-(\d\d)(?:T(\d\d:\d\d).*)?", value)
    if found:
        y, m, d, clock = found.groups()
        if col.how == "date" and not clock:
            return date(int(y), int(m), int(d))
        return f"{d}.{m}.{y}" + (f" {clock}" if clock else "")
    found = re.fullmatch(r"([<>]?)(-?\d+(?:\.(\d+))?)(?: ([^ ]+))?", value)
    if found and col.how == "unit":
        return value.replace(".", ",")
    if found and col.how in ("num", "comma"):
        bound, number, digits, _ = found.groups()
        if col.how == "num" and not bound:
            return ("num", float(number), "0" + ("." + "0" * len(digits) if digits else ""))
        return bound + number.replace(".", ",")
    return value


class Tab:
    def __init__(self, name, kind, recs, cols, id, lists=(), set=None, words=None, title=None, total=None, ignore=(), skip=None, offset=None, extra=None, blank=True):
        self.__dict__.update(locals())

    def table(self):
        lines = []
        back = self.words or {}
        for record in self.recs:
            rows = [(rows, False) for rows in [{}]] if not self.lists else expand(record, list(self.lists))
            for index, (which, deeper) in enumerate(rows):
                line = []
                for col in self.cols:
                    own = col.fn is None and col.to and not any(col.to.startswith(one) for one in self.lists)
                    if self.blank and own and index > 0:
                        line.append(None)
                    elif deeper and col.to and not col.to.startswith(self.lists[-1]) and not col.first and own is False and col.fn is None:
                        line.append(None)
                    else:
                        value = col.fn(record, which) if col.fn else value_at(record, col.to, which)
                        line.append(shop_value(value, col, back))
                lines.append(line)
        if self.total:
            lines.append([self.total.get(col.heading) for col in self.cols])
        head = [[self.title], []] if self.title else []
        return head, [col.heading for col in self.cols], lines

    def map(self):
        made = {"kind": self.kind, "sheet": self.name}
        if self.title:
            made["head"] = 3
        made["id"] = self.id
        if self.lists:
            made["group"] = [one[:-2] for one in self.lists]
        texts = [cell for line in self.table()[2] for cell in line if isinstance(cell, str)]
        if any(re.search(r"\d,\d", text) and re.match(r"[<>]?-?\d", text) for text in texts):
            made["decimal"] = ","
        if any(re.match(r"\d\d\.\d\d\.\d{4}", text) for text in texts):
            made["dates"] = "day-month-year"
        if self.offset:
            made["offset"] = self.offset
        made["columns"] = {key(col): col.entry() for col in self.cols if col.to and not col.fn or col.to and col.fn}
        for name in ("set", "words"):
            if getattr(self, name):
                made[name] = getattr(self, name)
        if self.ignore:
            made["ignore"] = list(self.ignore)
        if self.skip:
            made["skip"] = self.skip
        return [made] + [{"kind": kind, "sheet": self.name, **({"head": 3} if self.title else {}), **more} for kind, more in (self.extra or [])]


def key(col):
    """Units in brackets are no part of the name by which a map calls a heading; the whole heading does as well."""
    return col.heading


def openpyxl_book(tabs, path):
    book = openpyxl.Workbook()
    book.remove(book.active)
    for tab in tabs:
        sheet = book.create_sheet(tab.name)
        head, headings, lines = tab.table()
        for line in head + [headings] + lines:
            sheet.append([None] if not line else [None for _ in line])
            row = sheet.max_row if line else sheet.max_row + 1
            row = sheet._current_row
            for index, value in enumerate(line, 1):
                if value is None:
                    continue
                cell = sheet.cell(row=row, column=index)
                if isinstance(value, tuple):
                    cell.value, cell.number_format = value[1], value[2]
                else:
                    cell.value = value
                    if isinstance(value, date):
                        cell.number_format = "dd.mm.yyyy"
                    elif isinstance(value, str):
                        cell.number_format = "@"
                if line is headings:
                    cell.font = Font(bold=True)
    book.save(path)


def xlsxwriter_book(tabs, path):
    book = xlsxwriter.Workbook(path, {"strings_to_numbers": False, "strings_to_formulas": False, "strings_to_urls": False})
    book.set_properties({"author": "workshop"})
    bold, day, text = book.add_format({"bold": True}), book.add_format({"num_format": "dd.mm.yyyy"}), book.add_format({"num_format": "@"})
    formats = {}
    for tab in tabs:
        sheet = book.add_worksheet(tab.name)
        head, headings, lines = tab.table()
        for row, line in enumerate(head + [headings] + lines):
            for column, value in enumerate(line):
                if value is None:
                    continue
                if isinstance(value, tuple):
                    shape = formats.setdefault(value[2], book.add_format({"num_format": value[2]}))
                    sheet.write_number(row, column, value[1], shape)
                elif isinstance(value, date):
                    sheet.write_datetime(row, column, value, day)
                elif isinstance(value, int):
                    sheet.write_number(row, column, value)
                else:
                    sheet.write_string(row, column, value, bold if line is headings else text)
        sheet.freeze_panes(3 if tab.title else 1, 0)
    book.close()


def calc_book(tabs, path):
    with tempfile.TemporaryDirectory() as folder:
        inner = os.path.join(folder, "in", os.path.basename(path))
        os.makedirs(os.path.dirname(inner))
        openpyxl_book(tabs, inner)
        subprocess.run(
            ["soffice", "--headless", f"-env:UserInstallation=file://{folder}/profile", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", os.path.dirname(path), inner],
            check=True, stdout=subprocess.DEVNULL)


def lines_of(value, indent=0):
    """Maps as a person keeps them: one line for each column."""
    pad = "  " * indent
    if isinstance(value, dict) and value and ("to" in value or len(json.dumps(value)) < 90) and indent > 1:
        return json.dumps(value, ensure_ascii=False).replace("{", "{ ", 1)[:-1] + " }"
    if isinstance(value, dict) and value:
        return "{\n" + ",\n".join(f"{pad}  {json.dumps(k, ensure_ascii=False)}: {lines_of(v, indent + 1)}" for k, v in value.items()) + f"\n{pad}}}"
    if isinstance(value, list) and any(isinstance(one, dict) for one in value):
        return "[\n" + ",\n".join(f"{pad}  {lines_of(v, indent + 1)}" for v in value) + f"\n{pad}]"
    return json.dumps(value, ensure_ascii=False)


BOOK = load(os.path.join(DEMO, "air-receiver/book"))
OWN = json.dumps(BOOK)
for folder in ("order/shelf", "shop/shelf"):
    for kind, shelved in load(os.path.join(DEMO, folder)).items():
        # What the order's other vessel alone names is on no sheet of this one.
        other = ("material-certificate", "welding-procedure")
        BOOK.setdefault(kind, {}).update({id: one for id, one in shelved.items() if kind not in other or id in OWN})

if __name__ == "__main__":
    from tabs import BOOKS
    out = sys.argv[1] if len(sys.argv) > 1 else HERE
    os.makedirs(os.path.join(out, "sheets"), exist_ok=True)
    os.makedirs(os.path.join(out, "imports"), exist_ok=True)
    writers = {"openpyxl": openpyxl_book, "xlsxwriter": xlsxwriter_book, "calc": calc_book}
    for name, (writer, tabs) in BOOKS.items():
        if len(sys.argv) > 2 and name not in sys.argv[2:]:
            continue
        writers[writer](tabs, os.path.join(out, "sheets", f"{name}.xlsx"))
        with open(os.path.join(out, "imports", f"{name}.json"), "w") as file:
            file.write(lines_of([one for tab in tabs for one in tab.map()]) + "\n")
