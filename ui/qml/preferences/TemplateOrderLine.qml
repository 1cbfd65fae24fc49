// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// One setting in the order in which the controller asks, to be moved up and down.
RowLayout {
    id: line

    required property int index
    required property var order  // labels
    readonly property string label: order[index] ?? ""

    signal moveAsked(int by)

    spacing: Theme.gap

    // To the button that moved it here; at the end of the way to the other one.
    function takeFocus(by: int): void {
        const button = by < 0 ? (up.enabled ? up : down) : (down.enabled ? down : up);
        button.forceActiveFocus(Qt.TabFocusReason);
    }

    PlainWords {
        text: Sentence.fill(qsTr("%1. %2"), [line.index + 1, line.label])
        Layout.fillWidth: true
    }
    ActionButton {
        id: up
        enabled: line.index > 0
        pictogram: "up"
        Accessible.name: qsTr("Move %1 up").arg(line.label)
        onClicked: line.moveAsked(-1)
    }
    ActionButton {
        id: down
        enabled: line.index + 1 < line.order.length
        pictogram: "down"
        Accessible.name: qsTr("Move %1 down").arg(line.label)
        onClicked: line.moveAsked(1)
    }
}
