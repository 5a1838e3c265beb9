/** The part of the reference library the tests use; the package ships no types. */
declare module "smpte-timecode" {
  interface Reference {
    readonly frameCount: number;
    add(frames: number | string): Reference;
    subtract(frames: number | string): Reference;
    toString(): string;
  }
  export default function Timecode(timecode: number | string, frameRate: number, dropFrame: boolean): Reference;
}
