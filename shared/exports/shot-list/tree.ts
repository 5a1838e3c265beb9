import { episodeClocks } from "../../clocks";
import { episodeName, seriesName, type Episode, type Units } from "../../episode";
import { shootPlan } from "../../shoot-plan";
import { spacer, type Paper } from "../paper";
import { closing, overviewSection } from "./overview";
import { stationSection, type Station } from "./station";

/** The blocks as stations, each with its share of the session's floor time. */
export function stationsOf(episode: Episode): Station[] {
  const { gym } = episodeClocks(episode);
  const { blocks } = shootPlan(episode);
  let from = 0;
  return blocks.map((shoot, at) => {
    const to = from + (gym.blocks[at]?.seconds ?? 0);
    const station = { block: shoot.block, shoot, number: at + 1, of: blocks.length, from, to };
    from = to;
    return station;
  });
}

/**
 * The shot list of an episode: an overview, then one station a page, to be ticked off on the gym floor.
 * @param units - the unit loads are shown in
 */
export function shotListPaper(episode: Episode, units: Units = episode.session.units): Paper {
  const stations = stationsOf(episode);
  const plan = shootPlan(episode);
  const series = seriesName(episode);
  return {
    title: `${episodeName(episode)}: shot list`,
    author: episode.series.coach.trim(),
    subject: `Shot list${series === "" ? "" : ` of ${series}`}`,
    language: "en-GB",
    foot: "Ask before filming. Others in frame: stop, or ask them. Sharp pain: stop the set.",
    sections: [overviewSection(episode, plan, stations), ...stations.map((station) => stationSection(episode, plan, station, units, station === stations.at(-1) ? [spacer(8), closing(stations, "last")] : []))],
  };
}
