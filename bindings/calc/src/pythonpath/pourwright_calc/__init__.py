"""The add-in of LibreOffice Calc: cells in, cells out. It knows of UNO only file URLs, so it runs in any Python."""
