// What is typed in a form marked data-typed stays on this tablet until it is sent: a reload, or a circuit that is not there yet,
// does not empty it. Fields are kept by their id.
window.shopTyped = (() => {
  const KEY = 'shop.typed.';
  const read = form => localStorage.getItem(KEY + form);
  document.addEventListener('input', event => {
    const form = event.target.closest?.('[data-typed]')?.dataset.typed;
    const box = event.target;
    if (!form || !box.id) return;
    const all = JSON.parse(read(form) ?? '{}');
    all[box.id] = box.type === 'checkbox' ? (box.checked ? 'yes' : '') : box.value;
    // A tablet without room or with storage switched off loses only the second copy; the field itself still holds it.
    try { localStorage.setItem(KEY + form, JSON.stringify(all)); } catch (full) { console.warn(full); }
  });
  return { read, forget: form => localStorage.removeItem(KEY + form) };
})();

// In any other form of a page, and beside a button that reports to the step, what was typed comes back after a reload, for the same person on the same page, until it is
// recorded. Ticks do not: what was seen is seen again. PINs are never kept.
(() => {
  const FIELD = 'input:not([type=password], [type=file], [type=checkbox], [type=radio], [type=hidden]), textarea, select';
  const REPORT = 'main.page [data-choice]';
  const FORM = `main.page form:not([data-typed]), ${REPORT}`;
  const HOURS = 12;
  let sent = null, refused = false;
  const given = new WeakSet();

  const who = () => document.querySelector('[data-who]')?.dataset.who;
  const key = () => `shop.form.${who()}.${location.pathname}${location.search}`;
  const isKept = field => field.id && field.matches?.(FIELD) && field.closest(FORM) && !field.closest('[data-keypad]');
  const read = () => {
    const kept = JSON.parse(sessionStorage.getItem(key()) ?? 'null');
    return kept && Date.now() - kept.at < HOURS * 3600000 ? kept.fields : {};
  };
  const write = fields => {
    if (Object.keys(fields).length === 0) sessionStorage.removeItem(key());
    // A tablet without room loses only the second copy.
    else try { sessionStorage.setItem(key(), JSON.stringify({ at: Date.now(), fields })); } catch (full) { console.warn(full); }
  };
  const keep = event => {
    if (!event.isTrusted || !who() || !isKept(event.target)) return;
    given.add(event.target);
    write({ ...read(), [event.target.id]: event.target.value });
    sent = null;
  };

  // After a form was sent: what the server has emptied, or taken away with its form, is recorded. What it refused it says in the form,
  // and then nothing is forgotten. A form that is taken away is seen at once, a field that is emptied by the next look or on leaving.
  const look = () => {
    if (!sent) return;
    if (sent !== key()) {
      if (!refused) sessionStorage.removeItem(sent);
      sent = null;
      return;
    }
    refused = [...document.querySelectorAll(`:is(${FORM}) .form-wrong, main.page .notice-failed`)].some(words => words.textContent.trim() !== '');
    if (refused) return;
    const kept = Object.entries(read());
    const left = kept.filter(([id, value]) => document.getElementById(id)?.value === value);
    if (left.length < kept.length) write(Object.fromEntries(left));
  };
  setInterval(look, 300);
  addEventListener('pagehide', look);

  // A field gets its text back once: when its form is shown, or when the page has its line.
  const giveBack = () => {
    if (document.querySelector('main.page.is-asleep') || !who()) return;
    const fields = read();
    for (const [id, value] of Object.entries(fields)) {
      const field = document.getElementById(id);
      if (!field || given.has(field) || !isKept(field)) continue;
      given.add(field);
      if (field === document.activeElement || field.value === value) continue;
      field.value = value;
      for (const kind of ['input', 'change']) field.dispatchEvent(new Event(kind, { bubbles: true }));
    }
  };

  document.addEventListener('input', keep);
  document.addEventListener('change', keep);
  document.addEventListener('submit', event => { if (event.target.matches(FORM)) [sent, refused] = [key(), false]; });
  document.addEventListener('click', event => { if (event.target.closest?.(`:is(${REPORT}) [data-report]`)) [sent, refused] = [key(), false]; });
  new MutationObserver(() => { look(); giveBack(); }).observe(document.documentElement, { childList: true, subtree: true, attributes: true, attributeFilter: ['class'] });
})();
