#!/usr/bin/env node
// Starts the program from its bundles and V8's compiled form of them. Written in ES5, so that an old Node can say what it lacks.
'use strict'

var fs = require('fs')
var path = require('path')
var vm = require('vm')

var DIST = path.join(__dirname, '..', 'dist')
/** The command line, the work that most commands load when they run, and the papers that few do. */
var BUNDLES = { cli: 'lidwork', work: 'work', papers: 'papers' }
var FAULT = 4

function readIfThere(file, encoding) {
  try { return fs.readFileSync(file, encoding) } catch (error) {
    if (error.code === 'ENOENT') return undefined
    throw error
  }
}

/** Where V8's compiled form of a bundle is kept; one that was made on an engine set for a batch is of use only there. */
function compiledForm(name, batch) { return path.join(DIST, BUNDLES[name] + (batch ? '.batch' : '') + '.v8') }

/** One bundle, run. V8 refuses a compiled form that another version made, and then compiles as always. */
function runBundle(name, compiled, requireHere) {
  var file = path.join(DIST, BUNDLES[name] + '.cjs')
  var source = readIfThere(file, 'latin1') // a bundle is ASCII: read so, it need not be decoded
  if (source === undefined) return undefined
  var script = new vm.Script(source, { filename: file, cachedData: compiled && readIfThere(compiled) })
  var module = { exports: {} }
  script.runInThisContext()(module.exports, requireHere, module)
  return { program: module.exports, script: script }
}

/** The program. What it asks for by work: or papers: comes from the bundle of that name, read when it is first asked for; by batch: from the work bundle, on an engine that has been set for a batch. */
function load(useCompiled, forBatch) {
  var read = {}
  function bundle(name, requireThere) {
    if (read[name] === undefined) read[name] = runBundle(name, useCompiled ? compiledForm(name, forBatch) : undefined, requireThere)
    return read[name]
  }
  function requireHere(id) {
    var name = id.split(':')[0], rest = id.slice(name.length + 1)
    if (name === 'batch') { forBatch = true; name = 'work' }
    return name === 'node' || rest === '' || !BUNDLES[name] ? require(id) : bundle(name, require).program.load(rest)
  }
  bundle('cli', requireHere)
  return read.cli && { program: read.cli.program, work: function (file) { return requireHere('work:' + file) }, scripts: function () {
    var scripts = {}
    for (var name in read) scripts[name] = read[name].script
    return scripts
  } }
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
  loaded.program.main(process.argv.slice(2), loaded.program.nodeIo(path.join(__dirname, 'worker.cjs'))).then(function (code) { process.exitCode = code })
}

exports.load = load
exports.DIST = DIST
exports.BUNDLES = BUNDLES
exports.compiledForm = compiledForm
if (require.main === module) start()
