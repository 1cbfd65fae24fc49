// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Templates as T
import Wetfront.Theme

// What everything that can be pressed shares: size, focus ring, Enter beside Space.
T.AbstractButton {
    id: control

    implicitWidth: Math.max(Theme.target, implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(Theme.target, implicitContentHeight + topPadding + bottomPadding)
    horizontalPadding: Theme.space
    verticalPadding: Theme.spaceSmall
    focusPolicy: Qt.StrongFocus
    font.family: Theme.family
    font.pixelSize: Theme.fontBody

    Keys.onReturnPressed: control.clicked()
    Keys.onEnterPressed: control.clicked()

    Accessible.name: text

    FocusRing {
        z: 1
        visible: control.visualFocus
    }
}
