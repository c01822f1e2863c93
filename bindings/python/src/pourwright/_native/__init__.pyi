# What the build puts here: the C library, and its declarations as read from the header.
from typing import Any

ffi: Any
lib: Any
