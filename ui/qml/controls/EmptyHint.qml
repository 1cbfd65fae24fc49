// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme

// What stands where there is nothing yet: what will be here, and the one thing to do about it.
ColumnLayout {
    id: hint

    required property string text
    property string detail
    property string pictogram
    property string actionText

    signal acted

    spacing: Theme.space

    Pictogram {
        visible: name.length > 0
        name: hint.pictogram
        size: Theme.pictogramLarge
        colour: Theme.line
        Layout.alignment: Qt.AlignHCenter
    }
    PlainWords {
        text: hint.text
        kind: "title"
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: hint.detail
        soft: true
        horizontalAlignment: Text.AlignHCenter
        Layout.fillWidth: true
    }
    ActionButton {
        visible: text.length > 0
        text: hint.actionText
        kind: "primary"
        onClicked: hint.acted()
        Layout.alignment: Qt.AlignHCenter
    }
}
