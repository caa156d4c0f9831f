/** Goes on to a frame's new address with what stands behind `#`, which the browser's own way on would lose. */
const link = document.querySelector<HTMLAnchorElement>('#moved-to');
if (link !== null && location.hash !== '') location.replace(link.href + location.hash);
