/** Loudness is measured frame by frame; seconds. */
const FRAME = 0.01;
/** Nothing is softer than this; decibels below full scale. */
const NOTHING = -120;

/** Takes sound in pieces of any length and knows how loud each frame was. */
export interface LoudnessMeter {
  /** Samples from -1 to 1, the channels of each moment side by side. A piece may end anywhere. */
  readonly add: (samples: ArrayLike<number>) => void;
  /** Of every whole frame so far, decibels below full scale. */
  readonly levels: readonly number[];
  readonly frameSeconds: number;
}

/**
 * Measures sound without keeping it. Each channel counts by its power, so that channels that are turned against each other do not
 * cancel out.
 * @param sampleRate - samples a second
 */
export function loudnessMeter(sampleRate: number, channels = 1): LoudnessMeter {
  const frame = Math.max(1, Math.round(sampleRate * FRAME));
  const levels: number[] = [];
  const sums = new Float64Array(channels);
  const squares = new Float64Array(channels);
  let [moment, channel] = [0, 0];

  const closeFrame = (): void => {
    let power = 0;
    // without the steady offset that cheap sound cards add
    for (let c = 0; c < channels; c += 1) power += Math.max(0, (squares[c] ?? 0) / frame - ((sums[c] ?? 0) / frame) ** 2);
    levels.push(Math.max(NOTHING, 10 * Math.log10(power / channels + 1e-12)));
    sums.fill(0);
    squares.fill(0);
    moment = 0;
  };

  return {
    levels,
    frameSeconds: frame / sampleRate,
    add: (samples) => {
      for (let i = 0; i < samples.length; i += 1) {
        const value = samples[i] ?? 0;
        sums[channel] = (sums[channel] ?? 0) + value;
        squares[channel] = (squares[channel] ?? 0) + value * value;
        channel += 1;
        if (channel < channels) continue;
        channel = 0;
        moment += 1;
        if (moment === frame) closeFrame();
      }
    },
  };
}
