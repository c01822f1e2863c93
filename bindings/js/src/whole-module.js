import * as glue from '../build/pourwright.js'
import { loader } from './instance.js'
import * as parts from './parts.js'

export const { init, initSync, initFirst, initRest, instance, checkLoaded } = loader(glue, parts)
