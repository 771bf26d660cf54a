// What is typed comes back after a reload, and after the tablet was started again, for the same person on the same page until it is
// recorded: in every form, in a section marked data-typed, and beside a button that reports to the step. Fields are kept by their id.
// Ticks are not kept, what was seen is seen again, but for those marked data-kept, which are choices. PINs are never kept.
window.shopTyped = (() => {
  const FIELD = 'input:not([type=password], [type=file], [type=checkbox], [type=radio], [type=hidden]), input[type=checkbox][data-kept], textarea, select';
  const REPORT = 'main.page [data-choice]';
  const FORM = `main.page form, main.page [data-typed], ${REPORT}`;
  const KEPT = 'shop.form.';
  const HOURS = 12;
  let sent = null, refused = false;
  const given = new WeakSet();

  const who = () => document.querySelector('[data-who]')?.dataset.who;
  const key = () => `${KEPT}${who()}.${location.pathname}${location.search}`;
  const isKept = field => field.id && field.matches?.(FIELD) && field.closest(FORM) && !field.closest('[data-keypad]');
  const valueOf = field => field.type === 'checkbox' ? (field.checked ? 'yes' : '') : field.value;
  const isOld = kept => Date.now() - kept.at > HOURS * 3600000;
  const read = () => {
    const kept = JSON.parse(localStorage.getItem(key()) ?? 'null');
    return kept && !isOld(kept) ? kept.fields : {};
  };
  const write = fields => {
    if (Object.keys(fields).length === 0) localStorage.removeItem(key());
    // A tablet without room or with storage switched off loses only the second copy; the field itself still holds it.
    else try { localStorage.setItem(key(), JSON.stringify({ at: Date.now(), fields })); } catch (full) { console.warn(full); }
  };
  const keep = event => {
    if (!event.isTrusted || !who() || !isKept(event.target)) return;
    given.add(event.target);
    write({ ...read(), [event.target.id]: valueOf(event.target) });
    sent = null;
  };

  // After a form was sent: what the server has emptied, or taken away with its form, is recorded. What it refused it says in the form,
  // and then nothing is forgotten. A form that is taken away is seen at once, a field that is emptied by the next look or on leaving.
  const look = () => {
    if (!sent) return;
    if (sent !== key()) {
      if (!refused) localStorage.removeItem(sent);
      sent = null;
      return;
    }
    refused = [...document.querySelectorAll(`:is(${FORM}) .form-wrong, main.page .notice-failed`)].some(words => words.textContent.trim() !== '');
    if (refused) return;
    const kept = Object.entries(read());
    const left = kept.filter(([id, value]) => { const field = document.getElementById(id); return field && valueOf(field) === value; });
    if (left.length < kept.length) write(Object.fromEntries(left));
  };
  setInterval(look, 300);
  addEventListener('pagehide', look);

  // A field gets its text back once: when its form is shown, or when the page has its line. A section may say so.
  const giveBack = () => {
    if (document.querySelector('main.page.is-asleep') || !who()) return;
    for (const [id, value] of Object.entries(read())) {
      const field = document.getElementById(id);
      if (!field || given.has(field) || !isKept(field)) continue;
      given.add(field);
      if (field === document.activeElement || valueOf(field) === value) continue;
      if (field.type === 'checkbox') field.checked = value !== ''; else field.value = value;
      for (const kind of ['input', 'change']) field.dispatchEvent(new Event(kind, { bubbles: true }));
      field.closest('[data-typed]')?.querySelector('[data-typed-back]')?.removeAttribute('hidden');
    }
  };

  document.addEventListener('input', keep);
  document.addEventListener('change', keep);
  document.addEventListener('submit', event => { if (event.target.matches(FORM)) [sent, refused] = [key(), false]; });
  document.addEventListener('click', event => { if (event.target.closest?.(`:is(${REPORT}) [data-report]`)) [sent, refused] = [key(), false]; });
  new MutationObserver(() => { look(); giveBack(); }).observe(document.documentElement, { childList: true, subtree: true, attributes: true, attributeFilter: ['class'] });
  for (const old of Object.keys(localStorage)) if (old.startsWith(KEPT) && isOld(JSON.parse(localStorage.getItem(old)))) localStorage.removeItem(old);

  // The section was recorded, or begins again: nothing of this page is kept any more.
  return {
    forget: () => {
      localStorage.removeItem(key());
      document.querySelector('[data-typed-back]')?.setAttribute('hidden', '');
    },
  };
})();
