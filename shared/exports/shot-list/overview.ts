import { blockName, episodeName, seriesName, type Episode } from "../../episode";
import { cardInWords, shotsOf, wantsOf, type EpisodeWant, type LineShot } from "../../filming";
import type { ShootPlan } from "../../shoot-plan";
import {
  box, columns, field, heading, keepTogether, keyValues, label, paragraph, spacer, table, tickRow,
  type PaperNode, type Section,
} from "../paper";
import { stationOf } from "../../training";
import { minutesSeconds } from "../voiceover/words";
import { clockTime, dateInWords } from "./measures";
import { SIZE, runningTitle, type Station } from "./station";

const minutes = (seconds: number): number => Math.round(seconds / 60);
const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** A number a decision hangs on, under its name. */
const figure = (name: string, number: string, below: string): PaperNode[] => [
  label(name), paragraph(number, { size: 26, weight: "bold", after: 0 }), paragraph(below, { size: SIZE.around, after: 0 }),
];

function figures(episode: Episode, plan: ShootPlan, stations: readonly Station[]): PaperNode {
  const floor = minutes(stations.at(-1)?.to ?? 0);
  const slot = episode.session.slotMinutes;
  const { time } = episode.session;
  const spare = slot - floor;
  const shots = stations.reduce((sum, { block }) => sum + shotsOf(block).length, 0);
  const nice = stations.reduce((sum, { block }) => sum + shotsOf(block).filter(({ shot }) => shot.need === "nice").length, 0);
  return columns([
    { width: 1.2, children: figure("Floor minutes", `${floor} of ${slot}`, spare < 0 ? `${-spare} over the slot: leave something out` : spare === 0 ? "the slot is full" : `${spare} to spare`) },
    { width: 1, children: time === null ? figure("Start", "not set", "no time written down") : figure("On the floor", time, `until about ${clockTime(time, floor * 60)}`) },
    { width: 1, children: figure("Shots", String(shots), plan.lost.length > 0 ? `${plan.lost.length} not filmed by any set: see Lost` : nice === 0 ? `on ${counted(stations.length, "station")}` : `${nice} only nice to have`) },
    { width: 1, children: figure("Camera moves", String(plan.moves), plan.extraSeconds < 1 ? "all within rests" : `${minutesSeconds(plan.extraSeconds)} beyond the rests`) },
  ]);
}

function facts(episode: Episode): PaperNode {
  const { place, date, alone, cameras } = episode.session;
  return keyValues([
    { key: "Place", value: place.trim() || "not written down" },
    { key: "Day", value: date === null ? "not set" : dateInWords(date) },
    { key: "Crew", value: `${alone ? "alone, nobody to spot" : "not alone"}, ${counted(cameras, "camera")}` },
  ], { keyWidth: 64, size: SIZE.text });
}

/** The running order with clock time, minutes and shots. */
function order(episode: Episode, stations: readonly Station[]): PaperNode[] {
  if (stations.length === 0) return [box("outline", [paragraph("This episode has no blocks yet: there is nothing to film.", { size: SIZE.sets, weight: "semibold", after: 0 })])];
  const { time } = episode.session;
  const cell = (text: string, bold = false): PaperNode[] => [paragraph([{ text, ...(bold ? { weight: "semibold" as const } : {}) }], { after: 0 })];
  return [
    heading(2, "Stations in order"),
    table({
      summary: "Stations in order, with start, minutes and number of shots",
      columns: [{ width: 22, head: "" }, { width: 190, head: "block" }, { width: 120, head: "where" }, { width: 60, head: time === null ? "minute" : "at", align: "right" }, { width: 58, head: "minutes", align: "right" }, { width: 50, head: "shots", align: "right" }],
      rowHead: 1, size: SIZE.text, padding: 3,
      rows: stations.map(({ block, number, from, to }) => {
        const shots = shotsOf(block).length;
        return {
          cells: [
            cell(String(number)), cell(blockName(block), true), cell(stationOf(block)),
            cell(time === null ? String(minutes(from)) : clockTime(time, from)), cell(String(minutes(to) - minutes(from))), cell(shots === 0 ? "none" : String(shots), shots === 0),
          ],
        };
      }),
    }),
  ];
}

/** What filming alone takes besides the kit that is written down. Common practice, no source. */
const USUAL_KIT: readonly { readonly item: string; readonly known: RegExp }[] = [
  { item: "Phone, charged and emptied", known: /phone|camera/i }, { item: "Tripod", known: /tripod/i }, { item: "Tape for the marks", known: /tape/i },
  { item: "Spare battery or power bank", known: /batter|power/i }, { item: "Microphone", known: /micro|mic\b/i }, { item: "Cloth for the lens", known: /cloth|wipe/i }, { item: "Water and towel", known: /water|towel/i },
];

/** Kit to tick, three to a line: what is written down, then what is usual and missing from it. */
function kit(episode: Episode): PaperNode[] {
  const own = episode.session.kit.map((item) => item.trim()).filter(Boolean);
  const items = [...own, ...USUAL_KIT.filter(({ known }) => !own.some((item) => known.test(item))).map(({ item }) => `${item} (usual)`)];
  const lines: PaperNode[] = [];
  for (let at = 0; at < items.length; at += 3) {
    lines.push(columns([0, 1, 2].flatMap((step) => {
      const item = items[at + step];
      return [
        { width: 18, children: item === undefined ? [] : [field({ type: "tick", name: `kit-${at + step + 1}`, tip: `${item} packed`, width: 14, height: 14 })] },
        { width: 140, children: item === undefined ? [] : [paragraph(item, { size: SIZE.text, after: 0 })] },
      ];
    }), 6));
  }
  return [heading(3, "In the bag"), ...lines];
}

/** So many at most: the rest is on the screen, and a page that lists everything is not read. */
const MOST_WANTS = 8;

/** What the finished video needs and no shot line plans yet: must-haves first. */
function unplanned(episode: Episode): PaperNode[] {
  const open = wantsOf(episode).filter(({ coveredBy, id }) => coveredBy === null && id !== "room-tone" && !/^closing/.test(id));
  const order = (want: EpisodeWant): number => (want.need === "must" ? 0 : want.block === null ? 1 : 2);
  const shown = [...open].sort((a, b) => order(a) - order(b)).slice(0, MOST_WANTS);
  if (shown.length === 0) return [];
  const rest = open.length - shown.length;
  return [
    heading(2, "Not in any shot yet", { size: 19 }),
    table({
      summary: "What the video needs and no shot plans: tick, must or nice, what, where from, seconds",
      columns: [{ width: 22, head: "" }, { width: 40, head: "need" }, { width: 270, head: "what" }, { width: 110, head: "from" }, { width: 50, head: "least", align: "right" }],
      rowHead: 2, size: SIZE.text, padding: 3, valign: "middle",
      rows: shown.map((want, at) => ({
        cells: [
          [field({ type: "tick", name: `want-${at + 1}`, tip: `${want.what} filmed`, width: 14, height: 14 })],
          [paragraph([{ text: want.need, weight: want.need === "must" ? "bold" : "regular" }], { after: 0 })],
          [paragraph(want.what.charAt(0).toUpperCase() + want.what.slice(1), { after: 0 })],
          [paragraph([want.angle, want.size === want.angle ? "" : want.size].filter(Boolean).join(", "), { after: 0 })],
          [paragraph(`${want.seconds} s`, { after: 0 })],
        ],
      })),
    }),
    ...(rest > 0 ? [paragraph(`${rest} more, nice to have, stand in the Shoot place.`, { size: SIZE.around, grey: true })] : []),
  ];
}

function talking(episode: Episode, plan: ShootPlan): PaperNode {
  const { cameras, alone } = episode.session;
  const place = episode.session.place.trim();
  const phones = cameras > 1 ? "Two phones on small tripods" : "One phone on a small tripod";
  const who = alone ? "only me" : "only me and whoever helps me";
  return box("outline", [
    paragraph([{ text: "At the front desk, before anything is set up. ", weight: "bold" }, { text: `"I would like to film my own training${place === "" ? "" : ` here at ${place}`} for a video that will be public. ${phones}, ${who} in the picture. Where may I stand, and what should I keep out of?" The house's rules come first; a no is a no.` }], { size: SIZE.text }),
    paragraph([{ text: "People around you. ", weight: "bold" }, { text: "Tell those next to you before the first take. Look for mirrors. Someone walks into frame: stop, or ask them, and keep the take only with a clear yes. Never film changing rooms, never children." }], { size: SIZE.text }),
    paragraph([{ text: "Card and battery: ", weight: "bold" }, { text: cardInWords(episode, plan.recordedMinutes).join(" ") }], { size: SIZE.text, after: 0 }),
  ]);
}

/** The shot that is forgotten most, on the first page, at the end of the last one, and in its place. */
export function closing(stations: readonly Station[], at: "first" | "last"): PaperNode {
  const shots: { readonly item: LineShot; readonly number: number }[] = stations
    .filter(({ block }) => block.kind === "closing")
    .flatMap(({ block, number }) => shotsOf(block).map((item) => ({ item, number })));
  // On the closing's own page its rows stand above already.
  const rows = at === "last" && stations.at(-1)?.block.kind === "closing" ? [] : shots.length > 0
    ? shots.map(({ item, number }, nth) => tickRow({
      label: "Closing", under: item.shot.seconds === null ? "" : `${Math.round(item.shot.seconds)} s`, title: item.line.text.trim(),
      text: [paragraph(`Station ${number}`, { size: SIZE.around, after: 0 })], log: [], field: { name: `${at}-closing-${nth + 1}`, tip: `Closing shot ${nth + 1} filmed, as on the ${at} page` },
    }))
    : [tickRow({
      label: "Closing", under: "", title: "No closing shot is planned.",
      text: [paragraph("Film one all the same: to camera, where you end the session, for as long as your last words take.", { size: SIZE.text, after: 0 })],
      log: [], field: { name: `${at}-closing-1`, tip: `Closing shot filmed, as on the ${at} page` },
    })];
  return keepTogether([
    box("bar", [heading(2, "Before you leave: the closing shot", { size: 22 }), paragraph("It is forgotten most, and it cannot be filmed later.", { size: SIZE.text, after: 0 })]),
    ...rows,
    tickRow({ label: "Sound", under: "30 s", title: "Room tone", text: [paragraph("The room without you, from where the microphone was.", { size: SIZE.text, after: 0 })], log: [], field: { name: `${at}-room-tone`, tip: `Room tone recorded, as on the ${at} page` } }),
  ]);
}

/** The first page: when and where, the stations, what to bring and to say, and what must not be forgotten at the end. */
export function overviewSection(episode: Episode, plan: ShootPlan, stations: readonly Station[]): Section {
  const series = seriesName(episode);
  const title = episodeName(episode);
  return {
    startsPage: true,
    head: { left: runningTitle(episode), right: "Overview" },
    children: [
      heading(1, title, { size: title.length > 40 ? 22 : SIZE.title }),
      paragraph(`Shot list${series === "" ? "" : `, ${series}`}`, { size: 13, grey: true, after: 8 }),
      figures(episode, plan, stations),
      spacer(6),
      facts(episode),
      ...order(episode, stations),
      closing(stations, "first"),
      keepTogether([heading(2, "Before you set up", { size: 19 }), talking(episode, plan), ...kit(episode)]),
      ...unplanned(episode),
    ],
  };
}
