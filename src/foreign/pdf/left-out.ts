/** What a copy leaves out, in words that follow "left out:". What only serves editors and search is not worth a word. */
export const sorts = {
  scripts: "scripts",
  programs: "commands that start programs",
  actions: "actions that run by themselves or when clicked",
  forms: "form fields (they are printed as they look)",
  web: "links that lead out of the file",
  embedded: "files embedded in it",
  files: "references to other files",
  media: "sound, film or moving models",
  layers: "layers that can be switched (all of them are shown)",
} as const;

const keys: ReadonlyMap<string, string> = new Map([
  ["JS", sorts.scripts],
  ["JavaScript", sorts.scripts],
  ["A", sorts.actions],
  ["AA", sorts.actions],
  ["OpenAction", sorts.actions],
  ["XFA", sorts.forms],
  ["EF", sorts.embedded],
  ["AF", sorts.embedded],
  ["EmbeddedFiles", sorts.embedded],
  ["Ref", sorts.files],
  ["OPI", sorts.files],
  ["Alternates", sorts.files],
  ["FFilter", sorts.files],
  ["Movie", sorts.media],
  ["Sound", sorts.media],
  ["RichMediaContent", sorts.media],
  ["3DD", sorts.media],
]);

/** Which sort of thing goes with an entry that no shape knows; undefined for what needs no word. */
export const sortOfKey = (key: string): string | undefined => keys.get(key);

const actions: ReadonlyMap<string, string> = new Map([
  ["JavaScript", sorts.scripts],
  ["Rendition", sorts.media],
  ["Movie", sorts.media],
  ["Sound", sorts.media],
  ["RichMediaExecute", sorts.media],
  ["GoTo3DView", sorts.media],
  ["Launch", sorts.programs],
  ["URI", sorts.web],
  ["GoToR", sorts.files],
  ["GoToE", sorts.embedded],
  ["SubmitForm", sorts.forms],
  ["ResetForm", sorts.forms],
  ["ImportData", sorts.forms],
]);

/** Which sort of thing an action is. */
export const sortOfAction = (name: string | undefined): string => actions.get(name ?? "") ?? sorts.actions;

const annotations: ReadonlyMap<string, string> = new Map([
  ["Widget", sorts.forms],
  ["FileAttachment", sorts.embedded],
  ["Sound", sorts.media],
  ["Movie", sorts.media],
  ["Screen", sorts.media],
  ["RichMedia", sorts.media],
  ["3D", sorts.media],
]);

/** Which sort of thing an annotation is besides its look; undefined when the look is all. */
export const sortOfAnnotation = (subtype: string | undefined): string | undefined => annotations.get(subtype ?? "");
