// What came of a press is brought into sight where it would stand off the screen: an answer at the top of a long page, a refusal
// at a field above its button. Only right after a press, and only where none of it is in sight. In a place marked data-still what
// went well moves nothing: the row that was worked on says it.
(() => {
  const SAID = '.answer-good, .notice-failed, .said, .form-wrong, .door-refusal';
  let pressed = 0, where = '';
  const note = () => { pressed = Date.now(); where = location.href; };
  document.addEventListener('click', note, true);
  document.addEventListener('submit', note, true);
  // In a dialog its own window counts: the words can lie under its buttons.
  const isSeen = element => {
    const box = element.getBoundingClientRect();
    const window = element.closest('.mud-dialog-content')?.getBoundingClientRect();
    if (window) return box.height > 0 && box.top >= window.top && box.bottom <= window.bottom;
    const bar = document.querySelector('header')?.getBoundingClientRect().bottom ?? 0;
    return box.height > 0 && box.top >= Math.min(bar, 80) && box.bottom <= innerHeight;
  };
  const saidIn = node => node.nodeType !== Node.ELEMENT_NODE ? [node.parentElement?.closest(SAID)]
    : [node.closest(SAID), ...node.querySelectorAll(SAID)];
  new MutationObserver(changes => {
    if (Date.now() - pressed > 4000 || where !== location.href) return;
    const said = [...new Set(changes.flatMap(change => [...change.addedNodes].flatMap(saidIn)))]
      .filter(element => element?.isConnected && !(element.matches('.answer-good') && element.closest('[data-still]')) && element.textContent.trim() !== '' && element.checkVisibility());
    if (said.length > 0 && !said.some(isSeen)) said[0].scrollIntoView({ block: 'center' });
  }).observe(document.documentElement, { childList: true, subtree: true });
})();
