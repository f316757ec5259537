import { decodeHeads } from '../../design/decode-head.ts';
import { cardOf } from '../../design/head-cards.ts';
import { writeShelf } from '../../design/shelf-file.ts';
import type { HeadSpec } from '../../design/spec.ts';
import { filed } from '../../state/shelf.ts';
import { type Shelved, savedName } from '../../state/shelved.ts';
import { useStudio } from '../../state/studio.ts';
import { fileName, hand } from '../hand.ts';
import { today } from '../today.ts';

/** Hands some caps and heads over as a file, to be added to any shelf. */
export const saveCaps = (caps: readonly Shelved[], heads: readonly HeadSpec[], called: string): void =>
  hand(
    new Blob([writeShelf({ caps: caps.map(filed), heads })], { type: 'application/json' }),
    `${fileName(called)}, ${today()}.json`,
  );

/** One cap alone, with the card of its head, or its head as it is where that has none. */
export const saveCap = (cap: Shelved): void => {
  const heads = decodeHeads([cap.wish.spec?.head]).map(
    (head) => cardOf(useStudio.getState().heads, head) ?? head,
  );
  saveCaps([cap], heads, savedName(cap));
};
