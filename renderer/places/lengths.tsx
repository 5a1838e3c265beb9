import "./lengths.css";

interface Props {
  /** What is filled and what there is room for; seconds. */
  readonly filled: number;
  readonly room: number;
  /** The longest bar of the place, so that bars compare; seconds. */
  readonly longest: number;
  /** What the bar says in words; the picture repeats it. */
  readonly words: string;
}

/** A bar as long as the room there is, filled by what goes into it; what does not fit sticks out hatched. */
export function LengthBar({ filled, room, longest, words }: Props) {
  const share = (value: number): string => `${(100 * value) / (Math.max(longest, filled, room) || 1)}%`;
  const over = Math.max(0, filled - room);
  return (
    <div className="length-bar" role="img" aria-label={words}>
      <span className="length-room" style={{ width: share(room) }} />
      <span className="length-filled" style={{ width: share(Math.min(filled, room)) }} />
      {over > 0 && <span className="length-over" style={{ left: share(room), width: share(over) }} />}
    </div>
  );
}
