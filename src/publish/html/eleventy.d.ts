/** The few members of Eleventy this project uses; the package itself ships no types. */
declare module "@11ty/eleventy" {
  interface Template {
    data(): Record<string, unknown>;
    // Eleventy passes a page's data; each template knows its own.
    render(data: never): string;
  }

  interface Settings {
    addGlobalData(name: string, value: () => unknown): void;
    addTemplate(path: string, template: Template): void;
  }

  interface Options {
    readonly quietMode: boolean;
    readonly configPath: null;
    config(settings: Settings): void;
  }

  interface RenderedPage {
    readonly url: string;
    readonly content: string;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options: Options);
    disableLogger(): void;
    init(): Promise<void>;
    toJSON(): Promise<readonly RenderedPage[]>;
  }
}
