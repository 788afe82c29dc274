package domefold.screen;

import domefold.canvas.Canvas;

final class WhatIfView {
    private WhatIfView() {}

    static void draw(Canvas canvas, int row, int height, ConsultScreen screen) {}
}
