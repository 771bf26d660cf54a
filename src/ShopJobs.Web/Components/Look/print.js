// A button marked data-print prints the page. Where it is drawn hidden, as on the customer's page, which is whole without this, it is shown;
// what is folded there is opened before printing where the style alone does not.
(() => {
  for (const button of document.querySelectorAll('[data-print][hidden]')) button.hidden = false;
  document.addEventListener('click', event => { if (event.target.closest?.('[data-print]')) print(); });
  let folded = [];
  addEventListener('beforeprint', () => {
    folded = [...document.querySelectorAll('details.sheet-record:not([open])')];
    for (const record of folded) record.open = true;
  });
  addEventListener('afterprint', () => {
    for (const record of folded) record.open = false;
  });
})();
