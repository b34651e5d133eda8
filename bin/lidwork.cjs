#!/usr/bin/env node
// Starts the program from its one bundle and V8's compiled form of it. Written in ES5, so that an old Node can say what it lacks.
'use strict'

var fs = require('fs')
var path = require('path')
var vm = require('vm')

var DIST = path.join(__dirname, '..', 'dist')
var BUNDLE = path.join(DIST, 'lidwork.cjs')
var COMPILED = path.join(DIST, 'lidwork.v8')
var FAULT = 4

function readIfThere(file, encoding) {
  try { return fs.readFileSync(file, encoding) } catch (error) {
    if (error.code === 'ENOENT') return undefined
    throw error
  }
}

/** The bundle, run. V8 refuses a compiled form that another version made, and then compiles as always. */
function load(useCompiled) {
  var source = readIfThere(BUNDLE, 'latin1') // the bundle is ASCII: read so, it need not be decoded
  if (source === undefined) return undefined
  var script = new vm.Script('(function(exports,require,module){' + source + '\n})', { filename: BUNDLE, cachedData: useCompiled ? readIfThere(COMPILED) : undefined })
  var module = { exports: {} }
  script.runInThisContext()(module.exports, require, module)
  return { program: module.exports, script: script }
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
exports.BUNDLE = BUNDLE
exports.COMPILED = COMPILED
if (require.main === module) start()
