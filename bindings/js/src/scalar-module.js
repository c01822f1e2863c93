import * as glue from '../build/pourwright_scalar.js'
import { loader } from './instance.js'

export const { init, initSync } = loader(glue)
