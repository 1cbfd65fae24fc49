// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme

// Shows, at the edge of a scrolling area, that there is more and where in it one is.
Rectangle {
    required property Flickable flick
    readonly property bool upright: flick.contentHeight > flick.height

    parent: flick
    visible: upright || flick.contentWidth > flick.width
    x: upright ? flick.width - width : flick.visibleArea.xPosition * flick.width
    y: upright ? flick.visibleArea.yPosition * flick.height : flick.height - height
    width: upright ? Theme.scrollBar : flick.visibleArea.widthRatio * flick.width
    height: upright ? flick.visibleArea.heightRatio * flick.height : Theme.scrollBar
    radius: Theme.radius
    color: Theme.line
    Accessible.ignored: true
}
