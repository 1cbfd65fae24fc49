// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme

// Drawn around its parent, a hair outside, so that it is seen on a filled button too.
Rectangle {
    anchors.fill: parent
    anchors.margins: -Theme.focusBorder - Theme.border
    color: "transparent"
    radius: Theme.radius + Theme.focusBorder
    border.color: Theme.focus
    border.width: Theme.focusBorder
}
