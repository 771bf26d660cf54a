// A button marked data-print prints the page.
document.addEventListener('click', event => { if (event.target.closest?.('[data-print]')) print(); });
