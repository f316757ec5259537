const WORDS =
  'The tape goes level round the head: above the brow, above the ears, over the fullest part behind. ' +
  'Length is measured straight from brow to back, breadth straight across above the ears.';

/** Where the tape goes: a head from the side and from above, with the girth, or the measure being typed, in chalk. */
export const HeadPicture = () => (
  <svg className="head-picture" viewBox="0 0 330 186" role="img" aria-label={WORDS}>
    <g className="outline">
      <path d={profile} />
      <path d={ear} />
    </g>
    <path className="measure arc" d={over} />
    <g className="measure girth">
      <path className="tape" d={tape} />
      <path className="ticks" d={ticks} />
    </g>
    <path className="measure length" d="M29 20V32M149 20V32M29 26H149" />
    <g className="outline">
      <ellipse cx="253" cy="92" rx="48" ry="61" />
      <path d={nose} />
    </g>
    <ellipse className="measure girth round" cx="253" cy="92" rx="51" ry="64" />
    <path className="measure length" d="M253 31V153" />
    <path className="measure breadth" d="M205 96H301M205 90V102M301 90V102" />
    <path className="measure arc" d="M253 28V156" />
    <text x="89" y="182">
      from the side
    </text>
    <text x="253" y="182">
      from above
    </text>
  </svg>
);

/** The head from the left: neck, back, crown, brow, nose, chin. */
const profile =
  'M131 166C131 150 134 143 140 132C149 115 152 98 149 80C145 52 121 36 90 36C58 36 34 52 31 78' +
  'C30 84 31 87 30 91C27 99 21 107 20 112C20 115 27 115 29 117C30 120 27 122 28 124C30 126 30 127 29 129' +
  'C28 132 31 134 32 137C32 143 34 148 42 149C54 150 66 146 74 140C80 150 80 158 79 166';
const ear = 'M95 98C89 95 90 109 94 116C96 121 101 121 102 115C103 110 107 107 107 102C107 95 99 93 95 98';
/** A tape, seen a little from above, so that it reads as going round. */
const tape = 'M31 76C60 88 118 88 149 77L149.500 84C119 95 60 95 30.500 83Z';
const ticks = 'M42 80v4M54 83v4M66 85v4M78 86v4M90 86v4M102 86v4M114 85v4M126 83v4M138 81v4';
const over = 'M90 86C89 60 89 50 90 33';
const nose = 'M246 31C249 24 250 20 253 20C256 20 257 24 260 31';
