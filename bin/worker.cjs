// What a thread of `lidwork reprice` runs: the program's own bundles, and in them the loop that prices jobs.
'use strict'

var loaded = require('./lidwork.cjs').load(true, true)
loaded.work('src/cli/reprice/serve.ts').serve(loaded.program.nodeIo())
