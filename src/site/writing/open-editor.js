// A place opens in the editor, and the page stays where it is.
document.addEventListener('click', (event) => {
  const link = event.composedPath().find((node) => node instanceof HTMLAnchorElement);
  if (!link?.classList.contains('place')) return;
  event.preventDefault();
  fetch(link.href);
});
