/** What goes out with the video besides the handout. */
export * from "./chapters";
