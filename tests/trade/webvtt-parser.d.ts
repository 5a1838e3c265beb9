declare module "webvtt-parser" {
  export interface ParsedCue {
    readonly id: string;
    readonly startTime: number;
    readonly endTime: number;
    readonly text: string;
    readonly tree: { readonly children: readonly unknown[] };
  }
  export class WebVTTParser {
    parse(input: string, mode?: string): { readonly cues: readonly ParsedCue[]; readonly errors: readonly { readonly message: string; readonly line: number }[] };
  }
}
