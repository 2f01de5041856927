// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Drawings

/** Where a curve can be read: every so many metres along the path, and at the marks. */
QtObject {
    id: root

    required property PictureFacts facts
    property real step: 0.05
    property real height: NaN

    /** The height being read, kept on the path; NaN: none. */
    readonly property real at: Number.isFinite(root.height) && root.stops.length > 0 ? Ruling.within(root.height, root.facts.from, root.facts.to) : NaN
    readonly property var stops: root.list()

    function list(): var {
        const step = Math.max(0.01, Ruling.size(root.step, 0.05)), from = root.facts.from, to = root.facts.to, made = []
        if (root.facts.path.length === 0 || !(to - from < 10))
            return made
        for (let i = Math.ceil(from / step - 1e-6); i * step <= to + 1e-6; ++i)
            made.push(i * step)
        // a mark stands for a stop within a millimetre of it
        const marks = root.facts.markHeights.filter(mark => mark >= from - 1e-6 && mark <= to + 1e-6)
        return made.filter(stop => marks.every(mark => Math.abs(mark - stop) > 0.001)).concat(marks).sort((a, b) => a - b)
    }
    function nearest(height: real): real {
        return root.stops.reduce((best, stop) => Math.abs(stop - height) < Math.abs(best - height) ? stop : best, root.stops[0] ?? NaN)
    }
    /** The next stop above (1) or below (−1) a height; NaN at the end. */
    function next(height: real, way: int): real {
        const beyond = root.stops.filter(stop => (stop - height) * way > 0.0005)
        return beyond.length === 0 ? NaN : way > 0 ? beyond[0] : beyond[beyond.length - 1]
    }
}
