// What is wrong with the layout of the page as it now stands: a list of sentences.
(() => {
  const wrong = [];
  const width = document.documentElement.clientWidth;
  if (document.documentElement.scrollWidth > width + 1) {
    wrong.push(`the page is ${document.documentElement.scrollWidth} wide in a window of ${width}`);
  }
  const shown = node => {
    for (let e = node.parentElement; e; e = e.parentElement) {
      const style = getComputedStyle(e);
      if (style.display === 'none' || style.visibility === 'hidden') return false;
      if (e.tagName === 'DETAILS' && !e.open && !node.parentElement.closest('summary')) return false;
      if (e.classList.contains('skip') || e.tagName === 'title' || e.tagName === 'desc' || e.tagName === 'TITLE') return false;
    }
    return true;
  };
  // Every piece of text where it is drawn, one box a line.
  const pieces = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    if (!node.data.trim() || !shown(node)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
      if (box.width < 1 || box.height < 1) continue;
      pieces.push({ node, box, words: node.data.trim().slice(0, 40) });
      const scroll = node.parentElement.closest('.scroll');
      if (!scroll && (box.left < -0.5 || box.right > width + 0.5)) {
        wrong.push(`"${node.data.trim()}" leaves the page`);
      }
      const svg = node.parentElement.closest('svg');
      if (svg) {
        const frame = svg.getBoundingClientRect();
        if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1) {
          wrong.push(`"${node.data.trim()}" leaves its picture ${svg.querySelector('title').textContent}`);
        }
      }
    }
  }
  pieces.sort((a, b) => a.box.top - b.box.top);
  for (let i = 0; i < pieces.length; i++) {
    const a = pieces[i];
    for (let j = i + 1; j < pieces.length && pieces[j].box.top < a.box.bottom; j++) {
      const b = pieces[j];
      const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      // Boxes of lines hold room above and below the letters.
      if (across > 1.5 && down > 0.3 * Math.min(a.box.height, b.box.height)) {
        wrong.push(`"${a.words}" lies on "${b.words}"`);
      }
    }
  }
  if (matchMedia('print').matches) {
    for (const box of document.querySelectorAll('.scroll')) {
      const table = box.firstElementChild;
      if (box.offsetParent && table.scrollWidth > box.clientWidth + 1) {
        wrong.push(`on paper a table is cut: ${table.caption.textContent} (${table.scrollWidth} in ${box.clientWidth})`);
      }
    }
  }
  return { wrong: [...new Set(wrong)], pieces: pieces.length };
})()
