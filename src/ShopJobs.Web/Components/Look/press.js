// A press belongs to the button the finger went down on. Leaving a field can make the page draw a message, and the button then moves
// from under the finger: the browser gives the press to whatever lies there now. It is taken from there and given to its button;
// where that is gone, nothing is pressed.
(() => {
  const STILL = 12; // px a finger may slip and still press
  let down = null;
  const rest = button => { const { left, top } = button.getBoundingClientRect(); return `${Math.round(left)},${Math.round(top)}`; };
  addEventListener('pointerdown', event => {
    const button = event.target.closest?.('button');
    down = button && { button, at: rest(button), x: event.clientX, y: event.clientY };
  }, true);
  addEventListener('click', event => {
    const meant = down;
    if (!event.isTrusted || event.detail === 0) return;
    down = null;
    if (!meant || meant.button === event.target.closest?.('button') || Math.hypot(event.clientX - meant.x, event.clientY - meant.y) > STILL) return;
    if (meant.button.isConnected && rest(meant.button) === meant.at) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (meant.button.isConnected) meant.button.click();
  }, true);
})();
// A button that prints its page.
addEventListener('click', event => { if (event.target.closest?.('[data-print]')) print(); });
