/** What an element needs to take a file that is dropped on it. */
export const dropsFile = (onFile: (file: File) => void) => ({
  onDragOver: (event: React.DragEvent): void => event.preventDefault(),
  onDrop: (event: React.DragEvent): void => {
    event.preventDefault();
    const file = event.dataTransfer.files[0];
    if (file) onFile(file);
  },
});

/** Chooses one file. */
export function FileField({ label, accept, className, disabled = false, onFile }: { label: string; accept: string; className?: string; disabled?: boolean; onFile: (file: File) => void }) {
  return (
    <label className={className}>
      <span>{label}</span>
      <input
        type="file" accept={accept} disabled={disabled}
        onChange={(event) => {
          const file = event.target.files?.[0];
          // Emptied, so that the same file can be chosen again after it was mended.
          event.target.value = "";
          if (file) onFile(file);
        }}
      />
    </label>
  );
}
