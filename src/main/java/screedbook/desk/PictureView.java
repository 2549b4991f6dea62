package screedbook.desk;

/** The pictures of the shift on a whole screen. */
final class PictureView {
    private PictureView() {}

    static void draw(Model model, Frame frame) {
        int y = frame.top();
        for (String line : Echo.pictures(model.shift(), frame.width() - 2, frame.rows())) {
            if (y < frame.bottom()) {
                frame.pen().put(1, y++, line, Style.PICTURE);
            }
        }
    }
}
