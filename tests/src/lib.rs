//! Checks of pourwright against sources outside the project, and the readable second implementation.
