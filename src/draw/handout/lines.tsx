// A plain list of a handout's page, or what stands in its place where it is empty; says nothing of its own.
import type { Picture } from '../picture.tsx';

export function Lines({
  lines,
  otherwise,
}: {
  readonly lines: readonly string[];
  readonly otherwise: string;
}): Picture {
  if (lines.length === 0) return <p>{otherwise}</p>;
  return (
    <ul class="plain">
      {lines.map((line, i) => (
        <li key={i}>{line}</li>
      ))}
    </ul>
  );
}
