/**
 * The arrows between the folders of src, each of which may use only what is named here. A new folder without a line
 * of its own is refused, so that nobody forgets to say where it stands.
 */
const below = {
  formulas: [],
  units: [],
  catalogue: ['formulas', 'units'],
  functions: ['catalogue', 'formulas', 'units'],
  hosts: ['functions', 'catalogue', 'formulas', 'units'],
  drawing: ['formulas', 'units'],
  workbooks: ['hosts', 'functions', 'drawing', 'catalogue', 'formulas', 'units'],
  'task-pane': ['workbooks', 'hosts', 'functions', 'drawing', 'catalogue', 'formulas', 'units'],
  offline: [],
  daily: ['task-pane', 'functions', 'catalogue', 'formulas', 'units'],
  workbench: ['offline', 'task-pane', 'workbooks', 'hosts', 'functions', 'drawing', 'catalogue', 'formulas', 'units'],
};
const mayUseAll = ['command-line', 'manual', 'tools'];
const folders = [...Object.keys(below), ...mayUseAll];

const arrows = Object.entries(below).map(([folder, allowed]) => ({
  name: `${folder}-uses-only-what-is-below-it`,
  severity: 'error',
  comment: `src/${folder} may use ${allowed.join(', ') || 'nothing but itself'}`,
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: `^src/(${[folder, ...allowed].join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...arrows,
    {
      name: 'every-folder-has-its-arrows',
      severity: 'error',
      comment: 'say in this file what the new folder may use',
      from: { path: '^src/', pathNot: `^src/(${folders.join('|')})/` },
      to: {},
    },
    {
      name: 'mathematics-stands-alone',
      severity: 'error',
      comment: 'what Excel loads is our own code only: no package, nothing of Node',
      from: { path: '^src/(formulas|units|catalogue|functions)/' },
      to: { dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'no-circles',
      severity: 'error',
      comment: 'files that need each other are one idea in two files',
      from: { path: '^src/' },
      to: { circular: true },
    },
    {
      name: 'source-knows-no-tests',
      severity: 'error',
      comment: 'tests use the source, never the other way round',
      from: { path: '^src/' },
      to: { path: '^test/' },
    },
    {
      name: 'everything-resolves',
      severity: 'error',
      comment: 'an import that leads nowhere',
      from: { path: '^src/' },
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'types', 'default'],
    },
  },
};
