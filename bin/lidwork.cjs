#!/usr/bin/env node
// Starts the program from its bundles and V8's compiled form of them. Written in ES5, so that an old Node can say what it lacks.
'use strict'

var fs = require('fs')
var path = require('path')
var vm = require('vm')

var DIST = path.join(__dirname, '..', 'dist')
/** The command line, and the work that most commands load when they run. */
var BUNDLES = { cli: 'lidwork', work: 'work' }
var FAULT = 4

function readIfThere(file, encoding) {
  try { return fs.readFileSync(file, encoding) } catch (error) {
    if (error.code === 'ENOENT') return undefined
    throw error
  }
}

/** One bundle, run. V8 refuses a compiled form that another version made, and then compiles as always. */
function runBundle(name, useCompiled, requireHere) {
  var file = path.join(DIST, BUNDLES[name] + '.cjs')
  var source = readIfThere(file, 'latin1') // a bundle is ASCII: read so, it need not be decoded
  if (source === undefined) return undefined
  var script = new vm.Script('(function(exports,require,module){' + source + '\n})', { filename: file, cachedData: useCompiled ? readIfThere(path.join(DIST, BUNDLES[name] + '.v8')) : undefined })
  var module = { exports: {} }
  script.runInThisContext()(module.exports, requireHere, module)
  return { program: module.exports, script: script }
}

/** The program. What it asks for by work: comes from the second bundle, read when it is first asked for. */
function load(useCompiled) {
  var work
  function requireHere(id) {
    if (id.slice(0, 5) !== 'work:') return require(id)
    if (work === undefined) work = runBundle('work', useCompiled, require)
    return work.program.load(id.slice(5))
  }
  var cli = runBundle('cli', useCompiled, requireHere)
  return cli && { program: cli.program, scripts: function () { return { cli: cli.script, work: work && work.script } } }
}

function give(message) {
  process.stderr.write('lidwork: ' + message + '\n')
  process.exitCode = FAULT
}

function start() {
  var version = process.versions.node.split('.')
  if (version[0] < 20 || (version[0] === '20' && version[1] < 12)) return give('needs Node.js 20.12 or newer; this is ' + process.versions.node)
  var loaded = load(true)
  if (loaded === undefined) return give('is not built: run npm run build')
  loaded.program.main(process.argv.slice(2), loaded.program.nodeIo()).then(function (code) { process.exitCode = code })
}

exports.load = load
exports.DIST = DIST
exports.BUNDLES = BUNDLES
if (require.main === module) start()
