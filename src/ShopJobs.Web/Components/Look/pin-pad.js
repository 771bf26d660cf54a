// The big keys of a PIN field. Each key types into the field at once, without asking the server.
(() => {
  const reveal = root => root.querySelectorAll?.('[data-pin-pad] .pin-keys[hidden]').forEach(keys => { keys.hidden = false; });
  document.addEventListener('click', event => {
    const key = event.target.closest?.('[data-pin-key]');
    if (!key) return;
    const field = key.closest('[data-pin-pad]').querySelector('input');
    const typed = key.dataset.pinKey;
    if (typed === 'clear') field.value = '';
    else if (typed === 'back') field.value = field.value.slice(0, -1);
    else if (field.value.length < 6) field.value += typed;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    // Where a person is chosen, the last of six digits signs: all that is signed stands above the keys.
    if (/^\d$/.test(typed) && field.value.length === 6 && key.closest('[data-pin-signs]')?.querySelector('input[type=radio]:checked')) key.closest('form').requestSubmit();
  });
  new MutationObserver(() => reveal(document)).observe(document.documentElement, { childList: true, subtree: true });
  reveal(document);
})();
