import { page } from './page';
import { table } from './table';

/** The first page of the site: what it is for, and the way in. */
export function frontPage(): string {
  return page(
    'Siltstead',
    `<h1>Siltstead</h1>
<p class="lead">You keep fish and grow plants with the same water, and you build the settling drums in front of your filters yourself, from second-hand drums. No table lists the cone that your drum needs. You also need a cut plan for the sheets that you can buy, and you want to know how many fish the whole farm can carry.</p>
<p>Siltstead is a spreadsheet with worksheet functions for that work. Type what your tape measure says; it unrolls the cone, lays the pieces on the sheets, says how much base mix to pour and what the stand must carry, and follows a farm from feed to solids, ammonia, oxygen and flow.</p>
<p class="way-in"><a class="button" href="workbench/index.html">Open the workbench</a></p>
<p>Press <em>Your own drum</em> there: seven steps lead from the tape measure to the leak test.</p>
<p>The workbench runs in this browser. Nothing that you type leaves your machine, and after the first visit it works without a network.</p>
<h2>Other ways in</h2>
<ul>
<li><a href="guide/index.html">The guide</a>: from second-hand drums to the first picking, step by step.</li>
<li><a href="daily/index.html">The daily page</a>, for a phone at the tank: the day’s pull, the week’s water test, what is due.</li>
<li><a href="reference/index.html">All functions</a>, each with formula, range, sources and an example.</li>
<li><a href="reference/figures.html">The figures behind the defaults</a>, with their published ranges.</li>
<li><a href="support.html">Load it in Excel, get help, report an error</a>.</li>
</ul>
<h2>Ready-made workbooks</h2>
${sampleTable()}
<h2>Before you build</h2>
<p>Siltstead does the arithmetic. It cannot see the drum in front of you. Each step shows the cautions that go with it; where they and a maker’s sheet, your local code or a licensed tradesperson differ, follow them.</p>
<p><a href="changes.html">What changed</a> · <a href="privacy.html">Privacy</a> · <a href="licenses.txt">Licenses</a></p>`,
    '',
  );
}

const samples = [
  ['cone-cut-plan', 'From tape measure to cut plan: patterns, pieces on sheets, base mix, stand'],
  ['materials-sheet', 'What a settling bank needs, what it costs, and what a bought one costs'],
  ['stocking-scenarios', 'Farms side by side, from feed to the first limit'],
  ['harvest-book', 'Solids pulled, nutrients in them, the garden that they feed'],
  ['water-book', 'The weekly water test, judged'],
  ['own-figures', 'Your own growth, solids, filter and aerator figures, each with its uncertainty'],
] as const;

function sampleTable(): string {
  const rows = samples.map(
    ([name, what]) =>
      `<tr><th scope="row">${what}</th>${['US', 'metric'].map((units) => `<td><a href="sample-workbooks/${units}/${name}.xlsx">${units}</a></td>`).join('')}</tr>`,
  );
  return table(['workbook', 'inches, gallons', 'millimeters, liters'], rows);
}

export function privacyPage(): string {
  return page(
    'Privacy',
    `<h1>Privacy</h1>
<p class="lead">Siltstead collects nothing. It has no accounts, no counters and no advertising.</p>
<ul>
<li>The workbench, the guide and these pages contact only the server that they came from, and ask only for their own files. What you type stays in your browser, which keeps unsaved work of the workbench, the cut plans that it found last, and the entries of the daily page.</li>
<li>Your browser keeps copies of the site’s files, so that it works without a network. Clearing this site’s data in the browser removes them.</li>
<li>In Excel, the pane loads Microsoft’s library for add-ins from Microsoft, as every add-in must; Microsoft’s privacy statement covers that. The functions calculate on your machine, or on the server where your Excel runs.</li>
<li>As with any site, the host of this site can see which network addresses ask for its files.</li>
</ul>`,
    '',
  );
}

export function supportPage(): string {
  return page(
    'Help',
    `<h1>Help</h1>
<h2>In the workbench</h2>
<p>Press <em>Functions</em> in the pane beside the grid and type what you want to know: how many drums, when may I pick. Select a cell with an error to read what is allowed.</p>
<p>By the keyboard, <kbd>F6</kbd> goes from the bar to the sheet, to the charts of the sheet if it has some, and to the pane; <kbd>Shift</kbd>+<kbd>F6</kbd> goes back. Inside the sheet every other key belongs to the sheet. The charts of a sheet are in the strip under it; press its title to open or close it, and <em>Numbers</em> under a chart to read its numbers as a table.</p>
<h2>Load it in Excel</h2>
<p>You need Excel for Microsoft 365 on Windows or Mac, or the free Excel for the web, and the file <a href="manifest.xml" download>manifest.xml</a> of this site.</p>
<h3>Excel on the web</h3>
<ol><li>Open a workbook. Choose Home &gt; Add-ins &gt; More Settings &gt; Upload My Add-in.</li><li>Pick the manifest. It stays until the browser’s data are cleared.</li></ol>
<h3>Windows</h3>
<ol><li>Put the manifest into a shared folder of your own.</li><li>File &gt; Options &gt; Trust Center &gt; Trust Center Settings &gt; Trusted Add-in Catalogs: type the folder’s network path, press Add catalog, tick Show in Menu, press OK and start Excel again.</li><li>Home &gt; Add-ins &gt; Advanced &gt; SHARED FOLDER; pick Siltstead.</li></ol>
<h3>Mac</h3>
<ol><li>Copy the manifest to <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code>; make the folder if it is not there.</li><li>Start Excel again, open a workbook and pick Siltstead under Home &gt; Add-ins.</li></ol>
<p>If a formula shows <code>#NAME?</code> because the add-in was not loaded, use <em>Re-enter SILT formulas</em> in the pane.</p>
<h2>Report an error</h2>
<p>Tell the person who gave you this address: the formula as you typed it, its result, and the result that you expected. If you have the source, its README says how to run the checks.</p>`,
    '',
  );
}
