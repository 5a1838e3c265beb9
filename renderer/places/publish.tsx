import { Suspense, lazy, useMemo } from "react";
import { RELATION_WORDS, disclosurePlaces } from "./disclosure";
import { chapterNotes, chapterProblems, chapterTime, chaptersOf } from "../../shared/exports";
import { PublishFacts } from "../facts/publish-facts";
import { FindingList } from "../findings/finding-list";
import { groupFindings } from "../findings/group";
import { useActions, useSession } from "../session/context";
import { clock } from "../words/clock";
import { Figure, PlaceFrame } from "./place";
import { dayAndTime } from "./day";
import "./publish.css";

const PaperPreview = lazy(() => import("../papers").then(({ PaperPreview: preview }) => ({ default: preview })));

/** What goes out with the video, and when. */
export function Publish() {
  const { episode, clocks } = useSession();
  const { publish } = episode;
  return (
    <PlaceFrame
      title="Publish"
      about="What goes out with the video: chapters, disclosure, the handout."
      figures={
        <>
          <Figure value={publish === null ? "No day yet" : dayAndTime(publish.date, publish.time)} label={publish === null ? "when it goes out" : `goes out, ${publish.zone}`} />
          <Figure value={clock(clocks.screen.seconds)} label="of video" />
        </>
      }
    >
      <div className="publish-day"><PublishFacts /></div>
      <OpenFindings />
      <Disclosure />
      <Chapters />
      <section className="publish-part" aria-label="Handout">
        <h2>Handout</h2>
        <Suspense fallback={<p className="soft">Fetching the paper.</p>}>
          <PaperPreview document="handout.pdf" />
        </Suspense>
      </section>
    </PlaceFrame>
  );
}

function OpenFindings() {
  const { findings } = useSession();
  const open = useMemo(() => groupFindings(findings.filter((finding) => finding.moment === "before publishing")).moments[0]?.findings ?? [], [findings]);
  return (
    <section className="publish-part" aria-label="Open before you publish">
      <h2>Open before you publish</h2>
      {open.length === 0 ? <p className="soft">Nothing.</p> : <FindingList findings={open} />}
    </section>
  );
}

/** Who gave what, and where viewers are told. */
function Disclosure() {
  const { episode } = useSession();
  const actions = useActions();
  return (
    <section className="publish-part" aria-label="Disclosure">
      <h2>Disclosure</h2>
      {episode.partners.length === 0 && <p className="soft">No partners: nobody gave money or goods for this episode.</p>}
      <ul className="disclosures">
        {episode.partners.map((partner) => {
          const places = disclosurePlaces(episode, partner);
          return (
            <li key={partner.id}>
              <p><b>{partner.name || "A partner without a name"}</b> <span className="second">{RELATION_WORDS[partner.relation]}</span></p>
              <p>{partner.disclosure || <span className="missing">No words of disclosure yet.</span>}</p>
              <p className="second">
                {places.length === 0 ? <span className="missing">No say line names {partner.name || "the partner"}.</span> : "Said in "}
                {places.map((place, i) => (
                  <span key={place.line}>
                    {i > 0 && ", "}
                    <button type="button" className="word-button" onClick={() => actions.goTo({ block: place.block, line: place.line })}>{place.name}</button>
                  </span>
                ))}
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** The chapter list as it would stand in the description. */
function Chapters() {
  const { episode, clocks } = useSession();
  const chapters = useMemo(() => chaptersOf(episode, clocks.screen), [episode, clocks.screen]);
  const problems = chapterProblems(chapters, clocks.screen.seconds);
  return (
    <section className="publish-part" aria-label="Chapters">
      <h2>Chapters</h2>
      {chapters.length > 0 && (
        <ol className="chapters">
          {chapters.map(({ at, title }) => <li key={at}><span className="chapter-time">{chapterTime(at)}</span> {title}</li>)}
        </ol>
      )}
      {problems.map((problem) => <p key={problem} className="missing">{problem}</p>)}
      {chapterNotes(chapters).map((note) => <p key={note} className="second">{note}</p>)}
      <p className="second">From 0:00, three or more, each ten seconds or longer: the common rule of video platforms. Shorter blocks belong to the chapter before them.</p>
    </section>
  );
}
