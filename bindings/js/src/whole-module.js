import * as glue from '../build/pourwright.js'
import { loader } from './instance.js'

export const { init, initSync, instance } = loader(glue)
