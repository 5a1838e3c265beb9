import { decode } from "html-entities";

/** Any tag of WebVTT: <b>, <c.loud>, <v Odalys>, <00:00:03.000>, <lang en>. @source W3C WebVTT, "WebVTT cue text" */
const WEBVTT_TAG = /<\/?(?:(?:b|i|u|c|v|ruby|rt|lang)(?:[.\s][^<>]*)?|\d[\d:.]*)>/g;
/** Tags seen in SubRip files: bold, italic, underline, colour, and placing in braces. From memory: there is no standard. */
const SUBRIP_TAG = /<\/?(?:b|i|u|s|font)(?:\s[^<>]*)?>|\{\\[^{}]*\}|\{\/?[biu]\}/gi;

/** The words of a caption without tags; spaces tidied, empty lines left out. Only WebVTT writes signs as &amp;. */
export function plainText(lines: readonly string[], format: "webvtt" | "subrip"): string {
  return lines
    .map((line) => (format === "webvtt" ? decode(line.replace(WEBVTT_TAG, ""), { scope: "strict" }) : line.replace(SUBRIP_TAG, "")))
    .map((line) => line.replace(/[\u200b\u200e\u200f\u2028\u2029\ufeff]/g, "").replace(/[\s\u0000-\u001f\u007f]+/gu, " ").trim())
    .filter((line) => line !== "")
    .join("\n");
}
