import { blockName, episodeName, seriesName, type Episode } from "../../episode";
import { recording, shotsOf, type LineShot } from "../../filming";
import {
  box, columns, field, heading, keepTogether, keyValues, label, paragraph, spacer, table, tickRow,
  type PaperNode, type Section,
} from "../paper";
import { stationOf } from "../../training";
import { clockTime, dateInWords } from "./measures";
import { SIZE, runningTitle, type Station } from "./station";

const minutes = (seconds: number): number => Math.round(seconds / 60);
const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** A number a decision hangs on, under its name. */
const figure = (name: string, number: string, below: string): PaperNode[] => [
  label(name), paragraph(number, { size: 26, weight: "bold", after: 0 }), paragraph(below, { size: SIZE.around, after: 0 }),
];

function figures(episode: Episode, stations: readonly Station[]): PaperNode {
  const floor = minutes(stations.at(-1)?.to ?? 0);
  const slot = episode.session.slotMinutes;
  const { time } = episode.session;
  const spare = slot - floor;
  const shots = stations.reduce((sum, { block }) => sum + shotsOf(block).length, 0);
  const nice = stations.reduce((sum, { block }) => sum + shotsOf(block).filter(({ shot }) => shot.need === "nice").length, 0);
  return columns([
    { width: 1.2, children: figure("Floor minutes", `${floor} of ${slot}`, spare < 0 ? `${-spare} over the slot: leave something out` : spare === 0 ? "the slot is full" : `${spare} to spare`) },
    { width: 1, children: time === null ? figure("Start", "not set", "no time written down") : figure("On the floor", time, `until about ${clockTime(time, floor * 60)}`) },
    { width: 1, children: figure("Shots", String(shots), nice === 0 ? `on ${counted(stations.length, "station")}` : `${nice} of them only nice to have`) },
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

/** Kit to tick, three to a line. */
function kit(episode: Episode): PaperNode[] {
  const items = episode.session.kit.map((item) => item.trim()).filter(Boolean);
  if (items.length === 0) return [];
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

/** Card and battery from the shots planned, at the format most phones come with. */
function card(episode: Episode): string {
  const { minutes: recorded, gigabytes, batteries } = recording(episode);
  if (recorded === 0) return "No shots are planned, so none is reckoned.";
  const full = batteries * 100;
  return `about ${Math.max(1, Math.round(recorded))} min of recording. Bring ${gigabytes < 0.1 ? "0.1" : gigabytes.toFixed(1)} GB free (1080p, 30 frames, HEVC, margin included) and ${full < 100 ? `${Math.max(1, Math.ceil(full))} % of a full battery` : `${Math.ceil(batteries)} full batteries`}.`;
}

function talking(episode: Episode): PaperNode {
  const { cameras, alone } = episode.session;
  const place = episode.session.place.trim();
  const phones = cameras > 1 ? "Two phones on small tripods" : "One phone on a small tripod";
  const who = alone ? "only me" : "only me and whoever helps me";
  return box("outline", [
    paragraph([{ text: "At the front desk, before anything is set up. ", weight: "bold" }, { text: `"I would like to film my own training${place === "" ? "" : ` here at ${place}`} for a video that will be public. ${phones}, ${who} in the picture. Where may I stand, and what should I keep out of?" The house's rules come first; a no is a no.` }], { size: SIZE.text }),
    paragraph([{ text: "People around you. ", weight: "bold" }, { text: "Tell those next to you before the first take. Look for mirrors. Someone walks into frame: stop, or ask them, and keep the take only with a clear yes. Never film changing rooms, never children." }], { size: SIZE.text }),
    paragraph([{ text: "Card and battery: ", weight: "bold" }, { text: card(episode) }], { size: SIZE.text, after: 0 }),
  ]);
}

/** The shot that is forgotten most, on the first page as well as in its place. */
function closing(stations: readonly Station[]): PaperNode {
  const shots: { readonly item: LineShot; readonly number: number }[] = stations
    .filter(({ block }) => block.kind === "closing")
    .flatMap(({ block, number }) => shotsOf(block).map((item) => ({ item, number })));
  const rows = shots.length > 0
    ? shots.map(({ item, number }, at) => tickRow({
      label: "Closing", under: item.shot.seconds === null ? "" : `${Math.round(item.shot.seconds)} s`, title: item.line.text.trim(),
      text: [paragraph(`Station ${number}`, { size: SIZE.around, after: 0 })], log: [], field: { name: `closing-${at + 1}`, tip: "Closing shot filmed" },
    }))
    : [tickRow({
      label: "Closing", under: "", title: "No closing shot is planned.",
      text: [paragraph("Film one all the same: to camera, where you end the session, for as long as your last words take.", { size: SIZE.text, after: 0 })],
      log: [], field: { name: "closing-1", tip: "Closing shot filmed" },
    })];
  return keepTogether([
    heading(2, "Before you leave: the closing shot", { size: 19 }),
    ...rows,
    tickRow({ label: "Sound", under: "30 s", title: "Room tone", text: [paragraph("The room without you, from where the microphone was.", { size: SIZE.text, after: 0 })], log: [], field: { name: "room-tone", tip: "Room tone recorded" } }),
  ]);
}

/** The first page: when and where, the stations, what to bring and to say, and what must not be forgotten at the end. */
export function overviewSection(episode: Episode, stations: readonly Station[]): Section {
  const series = seriesName(episode);
  const title = episodeName(episode);
  return {
    startsPage: true,
    head: { left: runningTitle(episode), right: "Overview" },
    children: [
      heading(1, title, { size: title.length > 40 ? 22 : SIZE.title }),
      paragraph(`Shot list${series === "" ? "" : `, ${series}`}`, { size: 13, grey: true, after: 8 }),
      figures(episode, stations),
      spacer(6),
      facts(episode),
      ...order(episode, stations),
      closing(stations),
      keepTogether([heading(2, "Before you set up", { size: 19 }), talking(episode), ...kit(episode)]),
    ],
  };
}
