// The element that draws a picture: its pixels are drawn again only if it is another picture.

/** The most pixels across that are drawn: as many as a large screen has. */
const MOST = 1600

class MarkedPicture extends HTMLElement {
  #bitmap = null

  set bitmap(bitmap) {
    if (bitmap === this.#bitmap) return
    this.#bitmap = bitmap
    const scale = Math.min(1, MOST / bitmap.width)
    const canvas = document.createElement('canvas')
    canvas.width = Math.round(bitmap.width * scale)
    canvas.height = Math.round(bitmap.height * scale)
    canvas.getContext('2d').drawImage(bitmap, 0, 0, canvas.width, canvas.height)
    this.replaceChildren(canvas)
    // So that the whole picture fits on the screen.
    this.parentElement.style.setProperty('--aspect', String(bitmap.width / bitmap.height))
  }
}

customElements.define('marked-picture', MarkedPicture)
