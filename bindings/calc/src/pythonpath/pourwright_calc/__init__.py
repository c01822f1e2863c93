"""The add-in of LibreOffice Calc: cells in, cells out. Knows nothing of UNO but for file URLs, so it runs in any Python."""
