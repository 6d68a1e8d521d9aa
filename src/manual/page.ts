import { markupSafe } from './markup-safe';

/** A page of the reference around its body. */
export function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${markupSafe(title)} - Siltstead</title>
<link rel="stylesheet" href="reference.css">
</head>
<body>
<nav><a href="index.html">All functions</a> <a href="figures.html">Figures behind the defaults</a></nav>
<main>
${body}
</main>
</body>
</html>
`;
}
