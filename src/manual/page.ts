import { markupSafe } from './markup-safe';

/** A page of the site around its body. `root` leads from the page's folder to that of the site. */
export function page(title: string, body: string, root = '../'): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${markupSafe(title)} - Siltstead</title>
<link rel="icon" href="${root}icons/icon-32.png">
<link rel="manifest" href="${root}site.webmanifest">
<link rel="stylesheet" href="${root}site.css">
<script src="${root}offline.js" defer="defer"></script>
</head>
<body>
<nav aria-label="Siltstead"><a href="${root}index.html">Siltstead</a> <a href="${root}workbench/index.html">Workbench</a> <a href="${root}guide/index.html">Guide</a> <a href="${root}reference/index.html">Functions</a> <a href="${root}reference/figures.html">Figures behind the defaults</a> <a href="${root}support.html">Help</a></nav>
<main>
${body}
</main>
</body>
</html>
`;
}
