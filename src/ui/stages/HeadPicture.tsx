const WORDS =
  'The tape goes level round the head: above the brow, above the ears, over the fullest part behind. ' +
  'Length is measured straight from brow to back, breadth straight across above the ears.';

/** The head from the left: neck, back, crown, brow, nose, chin. */
const profile =
  'M132 186C131 170 133 156 138 144C146 128 151 106 149 82C146 47 121 24 90 24C59 24 35 43 31.5 74C31 79 32 83 31.3 87' +
  'C30 92 31 94 29.500 98C27 105 21.500 113 20 118.500C19.500 122 23 123.500 27.500 124C28.500 126 28 128.500 26.500 131' +
  'C26 133 28.500 134.500 29.500 135.500C28 136.800 27.500 138.500 28.500 140.500C29.500 142 30.500 143.500 30.200 146' +
  'C29.500 150 30 155 33.500 158.500C38 162 46 161.500 54 159C63 156 71 151 77 145C82 155 83 170 82 186';
const ear =
  'M95.500 96C90 93 88.500 104 92 113C94 119 97.500 124 101 122.500C104.500 121 103.500 116 105.500 112.500' +
  'C108 108.500 110.500 104 109 99C107.500 94 99.500 91.500 95.500 96';
const eye = 'M40 97C42.500 94.800 46 94.800 48.500 97';
const nose = 'M246 43C249 36 250 32 253 32C256 32 257 36 260 43';
/** A tape, seen a little from above, so that it reads as going round. */
const tape = 'M31.500 73C60 86 119 86 148.500 73.500L149.300 81.500C120 94 60 94 31.500 81Z';
const ticks =
  'M42 77v4M53 79.500v4M64 81.300v4M75 82.300v4M86 82.800v4M97 82.700v4M108 82v4M119 80.600v4M130 78.500v4M140 75.800v4';
const over = 'M100 84C99 60 97 42 92 24';

/** Where the tape goes: a head from the side and from above, with the girth, or the measure being typed, in chalk. */
export const HeadPicture = () => (
  <svg className="head-picture" viewBox="0 4 330 206" role="img" aria-label={WORDS}>
    <g className="outline">
      <path d={profile} />
      <path d={ear} />
      <path d={eye} />
      <ellipse cx="253" cy="102" rx="48" ry="60" />
      <path d={nose} />
    </g>
    <path className="measure arc" d={over} />
    <path className="measure arc" d="M253 42V162" />
    <path className="measure length" d="M31 9V19M149 9V19M31 14H149" />
    <path className="measure length" d="M253 42V162" />
    <path className="measure breadth" d="M205 106H301M205 100V112M301 100V112" />
    <ellipse className="measure girth round" cx="253" cy="102" rx="51.500" ry="63.500" />
    <g className="measure girth">
      <path className="tape" d={tape} />
      <path className="ticks" d={ticks} />
    </g>
    <text x="88" y="205">
      from the side
    </text>
    <text x="253" y="205">
      from above
    </text>
  </svg>
);
