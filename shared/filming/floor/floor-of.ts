import type { Block, Episode, Floor } from "../../episode";
import { isSameStation, stationOf } from "../../exercises";
import { spotAt } from "../bearings";
import { marksOf, setupOf, type Mark } from "../marks";
import { bodiesOf, type FilmingSetup } from "../stand";
import { detailAt, movedSide, onLine, place, strangers, type Handed, type Placed } from "./place";
import { personExtent, subjectExtent } from "./extent";
import { mirrorsSeen } from "./mirrors";
import { frameAt } from "./shows";
import type { BlockFloor, FilmingLine, FloorMark, MirrorView } from "./types";
import { capital, inAisle, nameOf, placeProblems, roomFor, shortfall, tightWalls } from "./walls";
import { bearingInWords, SIDE_WORDS } from "./words";

/** The room of a station, by its name; of two with one name the first counts. */
function roomAt(episode: Episode, station: string): Floor | null {
  return (episode.session.floors ?? []).find((floor) => isSameStation(floor.station, station)) ?? null;
}

/** What speaks against a side for the cameras: walls first, then people walking past, then mirrors. */
function burden(room: Floor, setup: FilmingSetup, placed: readonly Placed[]): number {
  return placed.reduce((sum, mark) => {
    const wall = shortfall(room, mark.bearing, mark.distance) ? 100 : 0;
    const mirror = mirrorsSeen(room, setup, mark.bearing, mark.distance).some(({ showsCamera }) => showsCamera) ? 1 : 0;
    return sum + wall + (inAisle(room, mark) ? 10 : 0) + mirror;
  }, 0);
}

/** The cameras stand where the coach put most of them, else on the left, unless the room is better on the right. */
function chooseSide(block: Block, marks: readonly Mark[], setup: FilmingSetup, room: Floor | null): Handed {
  const own = movedSide(block, marks);
  if (own || !room) return own ?? 1;
  return burden(room, setup, place(block, marks, setup, -1)) < burden(room, setup, place(block, marks, setup, 1)) ? -1 : 1;
}

function lineOf(setup: FilmingSetup, placed: readonly Placed[], handed: Handed): FilmingLine {
  const { body, person } = bodiesOf(setup);
  return {
    along: body.travel > 0 ? "walks" : person.long > person.tall ? "lies" : "faces",
    side: handed === 1 ? "left" : "right",
    crossing: placed.filter(({ bearing, size }) => size !== "insert" && !onLine(bearing) && Math.sign(bearing) !== handed).map(({ letter }) => letter),
  };
}

const ALONG_WORDS: Readonly<Record<FilmingLine["along"], string>> = { faces: "the subject faces along", lies: "the subject lies along", walks: "the subject walks along" };

function mirrorWords(mark: Placed, { side, showsCamera, safeBearing }: MirrorView): string {
  const where = `The mirror ${SIDE_WORDS[side]}`;
  if (!showsCamera) return `${where} is in the frame of ${nameOf(mark)} and shows the gym behind the camera: look who is in it.`;
  const safe = safeBearing === null ? "Hang something over it, or film closer." : `With the camera at ${bearingInWords(safeBearing)} it does not.`;
  return `${where} shows the camera and whoever stands behind it in ${nameOf(mark)}. ${safe}`;
}

/**
 * A block's station from above: where every mark stands, what its frame shows, and what is in the way.
 * Never throws; what cannot be used of a file is named in `problems` and kept.
 */
export function floorOf(episode: Episode, block: Block): BlockFloor {
  const setup = setupOf(episode, block);
  const station = stationOf(block);
  const room = roomAt(episode, station);
  const marks = marksOf(block, setup);
  const handed = chooseSide(block, marks, setup, room);
  const placed = place(block, marks, setup, handed);
  const subject = subjectExtent(setup);
  const line = lineOf(setup, placed, handed);

  const floorMarks = placed.map((mark): FloorMark => {
    const { wide, tall, shows } = frameAt(setup, mark.angle, mark.size, mark.distance - detailAt(setup, mark.size, mark.bearing));
    const mirrors = mirrorsSeen(room, setup, mark.bearing, mark.distance);
    const crosses = line.crossing.includes(mark.letter)
      ? [`${capital(nameOf(mark))} stands across the line ${ALONG_WORDS[line.along]}: left and right change places in the cut. Film it from the ${line.side}, or cut to it from a mark on the line.`]
      : [];
    return {
      ...mark, spot: spotAt(mark.bearing, mark.distance), frame: { wide, tall }, shows, mirrors,
      problems: [...placeProblems(room, setup, subject, mark, handed), ...crosses, ...mirrors.map((mirror) => mirrorWords(mark, mirror))],
    };
  });

  return {
    station, room, position: setup.position, setup, subject, person: personExtent(setup), marks: floorMarks, line,
    smallestRoom: roomFor(subject, placed),
    problems: [
      ...floorMarks.flatMap(({ problems }) => problems),
      ...tightWalls(room, subject),
      ...(marks.length === 0 ? ["No shot is planned here, so no camera has a mark."] : []),
      ...strangers(block, marks).map((name) => `A place for "${name}" is kept, but no shot asks for it.`),
    ],
  };
}
