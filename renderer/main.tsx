import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app";
import { connect } from "./bridge/connect";
import { createSession } from "./session/create-session";
import { guardLeaving } from "./session/guard-leaving";
import { fileBefore, noteOpenFile, openFirst } from "./session/open-again";
import "./styles/tokens.css";
import "./styles/base.css";
import "./app.css";

const api = connect();
const session = createSession(api, (error) => console.error(error));
const root = document.getElementById("app");
if (!root) throw new Error("main: the page has no #app");
createRoot(root).render(
  <StrictMode>
    <App api={api} session={session} />
  </StrictMode>,
);
const storage = (): Storage => window.sessionStorage;
const before = fileBefore(storage);
noteOpenFile(session.files.state, storage);
guardLeaving(session.files, document, window);
void openFirst(api, session.actions, before).catch((error: unknown) => console.error(error));
