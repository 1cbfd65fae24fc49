// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Charts
import Wetfront.Theme

// Diagonal lines over the whole item: the sign, without colour, for water on its way and for what is out of order.
Item {
    id: hatching

    property color colour: Theme.line
    property real spacing: Theme.hatchSpacing

    // Lines from bottom left to top right, each cut off at the edges.
    readonly property string lines: {
        let path = "";
        for (let d = spacing; d < width + height; d += spacing) {
            const startX = Math.max(0, d - height), endX = Math.min(width, d);
            path += `M${startX} ${d - startX} L${endX} ${d - endX} `;
        }
        return path;
    }

    Accessible.ignored: true

    LineArtItem {
        anchors.fill: parent
        path: hatching.lines
        grid: 0
        colour: hatching.colour
        thickness: Theme.border
    }
}
