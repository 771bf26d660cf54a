// A button that copies an address in full, and says beside itself that it did. A page served without a certificate has no clipboard
// of its own: there the text is selected in a field that nobody sees, and the browser's own copy is asked for.
(() => {
  const byHand = text => {
    const field = Object.assign(document.createElement('textarea'), { value: text, readOnly: true });
    field.style.cssText = 'position:fixed;opacity:0';
    document.body.append(field);
    field.select();
    const done = document.execCommand('copy');
    field.remove();
    return done;
  };
  const copy = async text => {
    try {
      await navigator.clipboard.writeText(text);
      return true;
    } catch {
      return byHand(text);
    }
  };
  addEventListener('click', async event => {
    const button = event.target.closest?.('button[data-copies]');
    if (!button) return;
    const done = await copy(new URL(button.dataset.copies, document.baseURI).href);
    button.focus();
    button.nextElementSibling.textContent = done ? 'Copied.' : 'This browser does not let a page copy: take the address from its bar.';
  });
})();
