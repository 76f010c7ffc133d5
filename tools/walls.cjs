// The walls between the rooms as rules for dependency-cruiser, made from the table in rooms.cjs.
const { rooms } = require('./rooms.cjs');

const ours = '^(app|lib|scripts|tests|e2e|tools|generated|prisma)/';
const literal = (name) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const anyOf = (names) => `(${names.map(literal).join('|')})`;

/** @param {string[]} names rooms @returns {string} a pattern of their folders */
const folders = (names) => (names.length === 0 ? '^$' : `^lib/${anyOf(names)}/`);

function rulesOf(name, room) {
  const { path, arrows, types = {}, words = {}, packages = {}, builtins = {} } = room;
  const open = [...Object.keys(arrows), ...Object.keys(types)];
  const own = path.startsWith('^lib/') ? path : '^app/';
  const labels = Object.keys(words).length ? `^${anyOf(Object.keys(words))}$` : '^$';
  const generated = name === 'store' ? '^generated/' : '^$';
  const rules = [
    {
      name: `${name}-rooms`,
      comment: `lib/${name} may import ${open.length ? open.join(', ') : 'no other room'}`,
      from: { path },
      to: { path: ours, pathNot: [own, folders(open), labels, generated] },
    },
    {
      name: `${name}-packages`,
      comment: `${name} may use ${Object.keys(packages).join(', ') || 'no package'}`,
      from: { path },
      to: {
        path: '(^|/)node_modules/',
        pathNot: Object.keys(packages).length
          ? `(^|/)node_modules/(@types/)?${anyOf(Object.keys(packages))}/`
          : '^$',
      },
    },
  ];
  if (!('*' in builtins)) {
    rules.push({
      name: `${name}-builtins`,
      comment: `${name} may use ${Object.keys(builtins).join(', ') || 'no module'} of Node`,
      from: { path },
      to: {
        dependencyTypes: ['core'],
        pathNot: Object.keys(builtins).length ? `^(node:)?${anyOf(Object.keys(builtins))}$` : '^$',
      },
    });
  }
  if (Object.keys(types).length > 0) {
    rules.push({
      name: `${name}-types`,
      comment: `${name} may import types, and nothing that runs, from ${Object.keys(types).join(', ')}`,
      from: { path },
      to: { path: folders(Object.keys(types)), pathNot: labels, dependencyTypesNot: ['type-only'] },
    });
  }
  return rules;
}

module.exports = {
  forbidden: [
    ...Object.entries(rooms).flatMap(([name, room]) => rulesOf(name, room)),
    {
      name: 'no-circles',
      comment: 'files that need each other are one file, or want a third',
      from: {},
      to: { circular: true },
    },
    {
      name: 'only-the-store-knows-the-database',
      comment: 'SQL and the database client live in lib/store',
      from: { pathNot: '^(lib/store|scripts|tests|generated|node_modules)/|^prisma[.]config' },
      to: { path: '^generated/|(^|/)node_modules/(@prisma|prisma|pg|@types/pg)/' },
    },
    {
      name: 'found',
      comment: 'an import must lead somewhere: a file, or a package of package.json',
      from: { path: '^(app|lib)/' },
      to: { couldNotResolve: true },
    },
  ].map((rule) => ({ severity: 'error', ...rule })),
  options: {
    doNotFollow: { path: ['node_modules', '^generated/'] },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    combinedDependencies: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.cjs', '.js', '.jsx', '.json', '.d.ts', '.css'],
    },
  },
};
