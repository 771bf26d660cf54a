// The customer's page is whole without this. It shows the button that prints, and opens what is folded before printing where the style
// alone does not.
(() => {
  for (const button of document.querySelectorAll('[data-print]')) {
    button.hidden = false;
    button.addEventListener('click', () => window.print());
  }
  let folded = [];
  addEventListener('beforeprint', () => {
    folded = [...document.querySelectorAll('details.sheet-record:not([open])')];
    for (const record of folded) record.open = true;
  });
  addEventListener('afterprint', () => {
    for (const record of folded) record.open = false;
  });
})();
