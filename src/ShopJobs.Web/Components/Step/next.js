// For whoever works with the keyboard or hears the page read: what is next is said aloud, and the focus is never left on nothing when the
// button that had it goes out of use. Reads the step's page as it is drawn; records nothing.
(() => {
  const NEXT = ['[data-keypad-click]', '[data-keypad-set]', '.condition-asked button.report-main', 'button.report-main', '.finish-button', '.next-main', '.sign-button', '.go-on .button-main', '.tick input:not(:checked)'];
  const shown = element => element?.checkVisibility({ visibilityProperty: true }) ?? false;
  const drawn = selector => [...document.querySelectorAll(selector)].find(shown);
  const region = Object.assign(document.createElement('p'), { id: 'said-aloud', className: 'visually-hidden' });
  region.setAttribute('role', 'status');
  document.body.append(region);
  const words = selector => document.querySelector(selector)?.textContent.trim().replace(/\s+/g, ' ') ?? '';

  let held = null, last = '', waiting = 0;
  document.addEventListener('focusin', event => { held = event.target.closest?.('[data-step] *') ? event.target : null; });
  // A key held down presses what records once.
  document.addEventListener('keydown', event => {
    if (event.repeat && (event.key === 'Enter' || event.key === ' ') && event.target.closest?.('[data-step] button')) event.preventDefault();
  }, true);

  const next = () => words(':is(.signed, .trainee-signed) > :first-child')
    || (drawn('.sign-button') ? 'Nothing is left to do here. Sign.' : words('#sign-holds') || (words('.work-which') && `Next: ${words('.work-which')}`));
  const look = () => {
    waiting = 0;
    if (!document.querySelector('[data-step]')) { last = ''; return; }
    const now = next();
    if (now && now !== last && last !== '') region.textContent = now;
    last = now || last;
    const lost = held && (!held.isConnected || held.disabled) && document.activeElement === document.body && !document.querySelector('.mud-dialog, dialog[open]');
    if (!lost) return;
    // What is out of use while a report is on its way, or rests after a touch, comes back: it is waited for, and nothing else takes the focus.
    if (document.querySelector('[data-settles][inert]')) return;
    const on = held.isConnected && !held.disabled ? held : NEXT.map(drawn).find(Boolean);
    if (on && !on.disabled) on.focus({ preventScroll: true });
  };
  new MutationObserver(() => { waiting ||= setTimeout(look, 100); })
    .observe(document.documentElement, { subtree: true, childList: true, characterData: true, attributes: true, attributeFilter: ['disabled', 'inert'] });
})();
