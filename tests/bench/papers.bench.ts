import { readFileSync } from "node:fs";
import { bench, describe } from "vitest";
import { EXPORTERS, type FontFiles } from "../../shared/exports";
import { DEFAULT_PACE } from "../../shared/speech";
import { largeEpisode } from "./large-episode";

const font = (file: string): Uint8Array => new Uint8Array(readFileSync(`node_modules/@expo-google-fonts/${file}.ttf`));
const hyper = (style: string): Uint8Array => font(`atkinson-hyperlegible-next/${style}/AtkinsonHyperlegibleNext_${style}`);
const fonts: FontFiles = {
  regular: hyper("400Regular"), semibold: hyper("600SemiBold"), bold: hyper("700Bold"), italic: hyper("400Regular_Italic"), fallback: font("noto-sans/400Regular/NotoSans_400Regular"),
};
const options = { paper: "a4", units: "kg", fonts, pace: DEFAULT_PACE, date: "2027-03-04", page: { script: "", style: "" } } as const;
const long = largeEpisode(40);
const short = largeEpisode(10);
/** A paper takes its time; three are enough for a ratio. */
const few = { iterations: 3, time: 0, warmupIterations: 1, warmupTime: 0 };

/** Read the ratio: four times the blocks should take about four times as long, less what every paper costs. */
for (const { meta, render } of EXPORTERS) {
  describe(meta.id, () => {
    bench("of 10 blocks", async () => void (await render(short, options)), few);
    bench("of 40 blocks", async () => void (await render(long, options)), few);
  });
}
