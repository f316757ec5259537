/** A trade word and what it means, in our own words. */
export interface Term {
  readonly word: string;
  /** Finds the word in a sentence, in any of its forms. */
  readonly found: RegExp;
  readonly meaning: string;
}

const term = (word: string, found: RegExp, meaning: string): Term => ({ word, found, meaning });

export const glossary: readonly Term[] = [
  term('grain', /\bgrain\b/i, 'The way the long threads run, along the woven edge of the cloth.'),
  term('nap', /\bnap\b/i, 'Hair that lies one way, so that the cloth looks right one way up only.'),
  term('pile', /\bpile\b/i, 'Short threads that stand up from the cloth.'),
  term('press cloth', /\bpress cloth\b/i, 'A thin cloth laid between the iron and the work.'),
  term('right side', /\bright sides?\b/i, 'The face of the cloth that is seen when it is worn.'),
  term('wrong side', /\bwrong sides?\b/i, 'The back of the cloth, which is hidden.'),
  term('allowance', /\ballowances?\b/i, 'The strip of cloth between the seam and the cut edge.'),
  term('stitch line', /\bstitch line\b/i, 'The line that the seam is sewn on.'),
  term('notch', /\bnotch(es)?\b/i, 'A small snip at the edge. It meets a snip on the next piece.'),
  term('staystitch', /\bstaystitch/i, 'A row of short stitches that keeps a curved edge from growing.'),
  term('interlining', /\binterlining\b/i, 'A layer that gives the cloth body. It lies where no one sees it.'),
  term('stiffener', /\bstiffener\b/i, 'The sheet inside that keeps its shape: plastic, card or buckram.'),
  term('buckram', /\bbuckram\b/i, 'A coarse cloth made stiff with size.'),
  term(
    'baste',
    /\bbast(e|es|ed|ing)\b/i,
    'To sew with long stitches that hold for a while and are pulled out.',
  ),
  term('clip', /\bclip\b/i, 'To snip into the allowance, so that a curve can open.'),
  term('trim', /\btrim\b/i, 'To cut the allowance down once the seam is sewn.'),
  term('topstitch', /\btopstitch/i, 'To sew a line that is seen on the right side.'),
  term(
    'press open',
    /\bpress (it|each|each seam|the seam) open\b/i,
    'To iron the two allowances apart, one to each side.',
  ),
  term('ham', /\bham\b/i, 'A firm round cushion to iron curves on.'),
  term('tip', /\btip\b/i, 'The flat top of a cap. On a gore, its upper point.'),
  term('side band', /\bside bands?\b/i, 'The ring of cloth between the top and the band.'),
  term('under ring', /\bunder rings?\b/i, 'The lower ring of a beret, between its edge and the band.'),
  term('band', /\b(?<!side )(?<!lining )bands?\b/i, 'The straight strip that grips the head.'),
  term('gore', /\bgores?\b/i, 'One of the long wedges that make a round crown.'),
  term('crown', /\bcrowns?\b/i, 'All of the cap above its lower edge.'),
  term('gather', /\bgather(s|ed)?\b/i, 'To draw an edge up on a thread, so that it gets shorter.'),
  term('fullness', /\bfullness\b/i, 'What one edge is longer than the edge it is sewn to.'),
  term('pleat', /\bpleats?\b/i, 'A fold that takes up cloth.'),
  term('ease', /\bease\b/i, 'To fit a slightly longer edge to a shorter one without a fold.'),
  term('binding', /\bbinding\b/i, 'A narrow strip folded over a raw edge.'),
  term('bias', /\bbias\b/i, 'The slant of the cloth, half way between its two grains. It stretches.'),
  term('eyelet', /\beyelets?\b/i, 'A small round hole with a firm edge, to let air in.'),
  term('awl', /\bawl\b/i, 'A pointed tool that parts the threads.'),
  term('stem', /\bstem\b/i, 'The little stalk on top of a beret.'),
  term('casing', /\bcasing\b/i, 'A tunnel of cloth for elastic or a tie.'),
  term('facing', /\bfacing\b/i, 'A strip that finishes an edge on the inside.'),
  term('sweatband', /\bsweatband\b/i, 'The strip inside that lies against the brow.'),
  term('lining', /\blining\b(?! band)/i, 'The thin crown inside, which hides the seams.'),
  term('turning gap', /\bturning gap\b/i, 'A place left open in a seam, to turn the work through.'),
  term('ladder stitch', /\bladder stitch\b/i, 'A hand stitch that runs from fold to fold and does not show.'),
  term('tack', /\btack\b/i, 'To hold with a few hand stitches.'),
  term('visor', /\bvisor\b/i, 'The stiff part that shades the eyes.'),
  term('brim', /\bbrims?\b/i, 'The part that stands out all round a hat.'),
];
