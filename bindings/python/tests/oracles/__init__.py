"""The library against general-purpose libraries that compute the same by their own means, live, in each run."""
