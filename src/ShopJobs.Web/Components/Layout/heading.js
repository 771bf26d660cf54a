// A new page begins at its heading, for whoever hears it read. On a slow line the server says so late: a field, or a button of the
// page, that was touched by then keeps the focus.
window.shopHeading = {
  focus: () => {
    if (document.activeElement?.closest('#content *')) return;
    const heading = document.querySelector('h1');
    if (!heading) return;
    if (!heading.hasAttribute('tabindex')) heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
  },
};
