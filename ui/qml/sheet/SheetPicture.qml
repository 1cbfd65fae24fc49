// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// A page as it will be printed.
Image {
    id: picture

    required property string name

    cache: false
    fillMode: Image.PreserveAspectFit
    horizontalAlignment: Image.AlignLeft
    Layout.preferredHeight: implicitWidth > 0 ? Math.min(width, implicitWidth) * implicitHeight / implicitWidth : implicitHeight
    Accessible.role: Accessible.Graphic
    Accessible.name: name

    Rectangle {
        width: picture.paintedWidth
        height: picture.paintedHeight
        color: "transparent"
        border.width: Theme.border
        border.color: Theme.line
        Accessible.ignored: true
    }
}
