// Runs inside the page under test: no Node here, and nothing of the page's own code.
export { overlaps } from './overlap';
export { cutTexts } from './cut';
export { inks, hideGlyphs } from './ink';
export { held, letGo, looksTheSame } from './focus';
export { shownNumbers } from './numbers';
export { startWatching, nextNominal, watched } from './watch';
