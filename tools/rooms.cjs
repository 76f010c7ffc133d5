// Which room may import what, and why. What is not written here is forbidden.
//   arrows    other rooms of lib/, by name: the reason
//   types     rooms of which only types may be imported: the reason
//   words     single files from which labels may be taken, so that nobody writes a label twice: the reason
//   packages  npm packages: the reason
//   builtins  modules of Node: the reason ('*' allows all of them)

const number = 'a number is worth nothing without its unit, and lib/quantity is what a number means';
const schema = 'what enters is checked by a schema at the border';
const guard = 'the build fails when a page sends this to a browser';

/** @type {Record<string, { path: string, arrows: Record<string, string>, types?: Record<string, string>, words?: Record<string, string>, packages?: Record<string, string>, builtins?: Record<string, string> }>} */
const rooms = {
  quantity: {
    path: '^lib/quantity/',
    arrows: {},
    packages: { zod: 'a field is a schema that knows its unit', mathjs: 'typed units are converted' },
  },
  catalog: { path: '^lib/catalog/', arrows: { quantity: number }, packages: { zod: schema } },
  calc: { path: '^lib/calc/', arrows: { quantity: number } },
  design: {
    path: '^lib/design/',
    arrows: { quantity: number, catalog: 'a part names a material, a wire, a connector of the tables' },
    packages: {
      zod: schema,
      canonicalize: 'one text for one document, by RFC 8785',
      '@noble/hashes': 'the hash of a document, the same in a browser',
      nanoid: 'stable ids of parts',
    },
  },
  assess: {
    path: '^lib/assess/',
    arrows: {
      quantity: number,
      design: 'it reads the document',
      calc: 'it works the numbers with the formulas',
      catalog: 'it takes what the document names from the tables',
    },
    packages: { zod: schema, canonicalize: 'one text for one assessment', '@noble/hashes': 'its hash' },
  },
  compare: {
    path: '^lib/compare/',
    arrows: {
      quantity: number,
      assess: 'it sets two assessments side by side',
      design: 'it lines two documents up by their ids',
    },
    packages: { zod: schema },
  },
  review: {
    path: '^lib/review/',
    arrows: {
      quantity: number,
      compare: 'what changed decides what must be signed again',
      assess: 'findings and margins decide the standing of a revision',
      design: 'a remark hangs on a field of the document',
    },
    packages: {
      zod: schema,
      canonicalize: 'one text for one entry',
      '@noble/hashes': 'the chain of the ledger',
    },
  },
  preview: {
    path: '^lib/preview/',
    arrows: {
      quantity: number,
      design: 'it holds the draft while it is typed',
      assess: 'it shows what the draft would come to, in the browser',
      compare: 'and what that changes',
    },
    packages: {
      zod: 'what the device kept is checked when it comes back',
      react: 'hooks of the design sheet',
    },
  },
  access: {
    path: '^lib/access/',
    arrows: {},
    packages: {
      zod: schema,
      '@node-rs/argon2': 'passwords are kept as argon2id',
      'next-auth': 'it seals and opens the token of a session',
      'server-only': guard,
    },
    builtins: { crypto: 'tokens, and comparing them in constant time' },
  },
  store: {
    path: '^lib/store/',
    arrows: {
      quantity: number,
      design: 'what comes out of the database is parsed as a document',
      assess: 'and as an assessment',
      review: 'and as an entry of the review',
    },
    packages: {
      pg: 'the connection',
      '@prisma/client': 'the client',
      '@prisma/adapter-pg': 'the client over our connection',
      zod: schema,
      'server-only': guard,
    },
    builtins: { '*': 'it runs on the server only' },
  },
  work: {
    path: '^lib/work/',
    arrows: { assess: 'a thread simulates what an assessment is too quick for' },
    types: { design: 'a job is handed a document' },
    builtins: {
      worker_threads: 'what takes longer than a request is done beside the pages',
      path: 'where the program of a thread lies',
      os: 'threads step back behind the pages',
    },
  },
  service: {
    path: '^lib/service/',
    arrows: {
      quantity: number,
      work: 'it hands on what takes longer than a request',
      access: 'it asks who may do it',
      review: 'the rules of review',
      compare: 'what changed',
      assess: 'what a design comes to',
      design: 'it reads what was handed in',
      store: 'it opens the transaction',
    },
    packages: {
      zod: schema,
      'server-only': guard,
      next: 'the request that carries the session',
      'next-auth': 'the session of a request',
      react: 'who is looking is read once a request',
    },
    builtins: { crypto: 'random tokens', async_hooks: 'what belongs to one request' },
  },
  demo: {
    path: '^lib/demo/',
    arrows: {
      quantity: number,
      service: 'the demo club is made by the same use cases as any other',
      design: 'its designs are documents',
    },
    types: { access: 'its members have roles' },
    packages: { zod: schema },
    builtins: { '*': 'it runs on the server only and keeps the password in a file' },
  },
  cli: {
    path: '^lib/cli/',
    arrows: {
      quantity: number,
      assess: 'pawl assess',
      compare: 'pawl compare',
      design: 'it reads documents from files',
      service: 'the ledger is verified, and a club founded, by use cases',
    },
    packages: { zod: schema },
    builtins: { '*': 'files, arguments, exit codes' },
  },
  ui: {
    path: '^lib/ui/',
    arrows: { quantity: 'it prints numbers with their units' },
    types: {
      design: 'a component says what it draws',
      assess: 'a component says what it draws',
      compare: 'a component says what it draws',
      review: 'a component says what it draws',
      catalog: 'a component says what it draws',
      calc: 'a component says what it draws',
      preview: 'a component says what it draws',
    },
    words: {
      'lib/assess/assessment.ts': 'what a section and a mode of failure are called',
      'lib/assess/gain-map.ts': 'what a verdict on a gain is called',
      'lib/assess/faults.ts': 'what a fault is called and what ends it',
    },
    packages: {
      react: 'components',
      'react-dom': 'components',
      katex: 'formulas as MathML',
      mathjs: 'the text of a formula is read before it is set',
      'd3-scale': 'axes',
      'd3-shape': 'lines of a plot',
      'react-markdown': 'remarks are written as marked text',
      'rehype-sanitize': 'and cleaned of what could run',
      'remark-gfm': 'with tables',
      'micromark-util-types': 'types of the above',
    },
  },
  app: {
    path: '^(app/|proxy[.]ts|instrumentation[.]ts)',
    arrows: {
      ui: 'pages are made of components',
      service: 'the only door to everything else',
      preview: 'the design sheet is worked on in the browser',
    },
    types: {
      access: 'a page names the role of whom it shows',
      quantity: 'a page names the type of what it hands on',
      design: 'a page names the type of what it hands on',
      assess: 'a page names the type of what it hands on',
      compare: 'a page names the type of what it hands on',
      review: 'a page names the type of what it hands on',
    },
    words: { 'lib/access/policy.ts': 'what a role is called' },
    builtins: { crypto: 'the id of a part of a page that follows from given facts alone' },
    packages: {
      next: 'routes',
      'next-auth': 'the route that signs in',
      react: 'pages',
      'react-dom': 'pages',
      zod: 'forms and requests are checked at the border',
      '@fontsource-variable/archivo': 'the lettering',
      'server-only': guard,
    },
  },
};

module.exports = { rooms };
