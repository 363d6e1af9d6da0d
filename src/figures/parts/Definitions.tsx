/** Arrowheads and hatchings that all drawings of a page share; stands once in the page, see `layouts/Base.astro`. */
export function Definitions() {
  return (
    <svg width="0" height="0" aria-hidden="true" class="definitions">
      <defs>
        <marker
          id="arrow"
          viewBox="0 0 10 10"
          refX="9.5"
          refY="5"
          markerWidth="7"
          markerHeight="7"
          orient="auto-start-reverse"
        >
          <path d="M0 2 L10 5 L0 8 Z" fill="context-stroke" />
        </marker>
        <pattern
          id="end-grain"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="5" height="5" class="wood-end" />
          <line x1="0" y1="0" x2="0" y2="5" class="hatch" />
        </pattern>
        <pattern id="band" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <rect width="5" height="5" class="usual" />
          <line x1="0" y1="0" x2="0" y2="5" class="usual-hatch" />
        </pattern>
        <pattern id="jam" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="4" height="4" class="warn" />
          <line x1="0" y1="0" x2="0" y2="4" class="warn-hatch" />
        </pattern>
        <pattern
          id="pencil"
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <line x1="0" y1="0" x2="0" y2="6" class="pencil-hatch" />
        </pattern>
      </defs>
    </svg>
  );
}
