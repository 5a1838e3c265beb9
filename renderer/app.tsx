import { Suspense, lazy, useCallback, useEffect, useState, useSyncExternalStore } from "react";
import type { Api } from "../shared/bridge";
import { episodeName, seriesName } from "../shared/episode";
import { FileNotice, Files } from "./files";
import { Findings } from "./findings/findings";
import { ImportText } from "./imports";
import { MakePapers } from "./papers";
import { PlaceCount } from "./place-count";
import { PlaceGuard } from "./place-guard";
import { Ribbon } from "./ribbon/ribbon";
import { BookContext } from "./rule-book/context";
import { RuleBook } from "./rule-book/rule-book";
import { ActionsContext, ApiContext, SessionContext } from "./session/context";
import type { OpenSession } from "./session/create-session";
import { Refusal } from "./session/refusal";
import { PLACES, type Session } from "./session/types";
import { useAppKeys } from "./session/use-app-keys";
import { gravest, openCounts } from "./words/open-counts";
import { PLACE_NAMES } from "./words/place-names";
import { ViewChoices } from "./view-choices";
import { Sheet } from "./write/sheet";

const Train = lazy(() => import("./places/train").then((place) => ({ default: place.Train })));
const Shoot = lazy(() => import("./places/shoot").then((place) => ({ default: place.Shoot })));
const Speak = lazy(() => import("./places/speak").then((place) => ({ default: place.Speak })));
const Publish = lazy(() => import("./places/publish").then((place) => ({ default: place.Publish })));

/** "Saved 10:42", or what stands in the way of that. */
function fileWords({ status, savedAt, name }: Session["file"]): string {
  if (status === "saving") return "Saving";
  if (status === "failed") return "Not saved";
  if (status === "changed-outside") return "Changed outside";
  if (status === "unsaved") return name === null ? "Not saved yet" : "Unsaved changes";
  return savedAt === null ? "Saved" : `Saved ${new Date(savedAt).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", hourCycle: "h23" })}`;
}

function Header({ session, onFiles, onPapers }: { session: Session; onFiles: () => void; onPapers: () => void }) {
  const { episode, place, findings, file } = session;
  const counts = openCounts(findings);
  const series = seriesName(episode);
  const isClear = PLACES.every((each) => gravest(counts[each]) === null);
  return (
    <header className="app-head">
      <button type="button" className="episode-button" onClick={onFiles} title="Episodes: open, new, older states">
        <b>{series || episodeName(episode)}</b>
        {series && <span>{episode.title}</span>}
      </button>
      <ActionsContext.Consumer>
        {(actions) => (
          <nav aria-label="Places">
            {PLACES.map((each) => (
              <button key={each} type="button" aria-current={each === place ? "page" : undefined} onClick={() => actions?.show(each)}>
                {PLACE_NAMES[each]}
                {!isClear && <PlaceCount counts={counts[each]} />}
              </button>
            ))}
          </nav>
        )}
      </ActionsContext.Consumer>
      <div className="app-tools">
        <ViewChoices />
        <span className="second" role="status">{fileWords(file)}</span>
        <button type="button" className="main-button" onClick={onPapers}>Make papers</button>
      </div>
    </header>
  );
}

/** The window: five places over one episode, the running order at the left, the findings at the right. */
export function App({ api, session: { store, actions, editor } }: { api: Api; session: OpenSession }) {
  const session = useSyncExternalStore(store.subscribe, store.get);
  const [isFiles, setFiles] = useState(false);
  const [isPapers, setPapers] = useState(false);
  const [isImport, setImport] = useState(false);
  const { place, episode } = session;
  const [book, setBook] = useState<{ about: string | null } | null>(null);
  const openBook = useCallback((about: string | null) => setBook({ about }), []);
  const { refused, onRead } = useAppKeys(api, actions, { onOpen: () => setFiles(true), onPapers: () => setPapers(true), onChecks: () => openBook(null) });
  useEffect(() => {
    document.title = `${episodeName(episode)} · Repwright`;
  }, [episode]);
  return (
    <ApiContext value={api}>
      <ActionsContext value={actions}>
        <SessionContext value={store}>
          <BookContext value={openBook}>
            <Header session={session} onFiles={() => setFiles(true)} onPapers={() => setPapers(true)} />
            <FileNotice />
            <div className="app-body">
              <aside className="app-order" aria-label="Running order"><Ribbon /></aside>
              <main className="app-place" data-place={place} tabIndex={-1}>
                <div hidden={place !== "write"}><Sheet editor={editor} isCovered={isFiles} /></div>
                <PlaceGuard key={place}>
                  <Suspense fallback={<p className="app-wait">One moment.</p>}>
                    {place === "train" && <Train />}
                    {place === "shoot" && <Shoot />}
                    {place === "speak" && <Speak />}
                    {place === "publish" && <Publish />}
                  </Suspense>
                </PlaceGuard>
              </main>
              <aside className="app-findings" aria-label="Findings"><Findings /></aside>
            </div>
            <Files open={isFiles} onClose={() => setFiles(false)} onImport={() => setImport(true)} />
            <ImportText open={isImport} onClose={() => setImport(false)} />
            <MakePapers open={isPapers} onClose={() => setPapers(false)} />
            <RuleBook open={book !== null} about={book?.about ?? null} onClose={() => setBook(null)} />
            <Refusal refused={refused} onOver={onRead} />
          </BookContext>
        </SessionContext>
      </ActionsContext>
    </ApiContext>
  );
}
