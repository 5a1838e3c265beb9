import { Component, type ReactNode } from "react";

/** Keeps a fault in one place from taking the window, and the words in it, away. */
export class PlaceGuard extends Component<{ children: ReactNode }, { fault: string | null }> {
  override state = { fault: null };

  static getDerivedStateFromError(error: unknown): { fault: string } {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render(): ReactNode {
    if (this.state.fault === null) return this.props.children;
    return (
      <div className="app-wait" role="alert">
        <p>This place could not be drawn. Your words are safe in Write and are being saved as before.</p>
        <p className="second">{this.state.fault}</p>
        <p><button type="button" className="word-button" onClick={() => this.setState({ fault: null })}>Try again</button></p>
      </div>
    );
  }
}
