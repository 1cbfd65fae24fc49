// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// One thing that the controller asks for, in its own words; what it cannot hold says so.
ColumnLayout {
    id: line

    required property var modelData

    spacing: 0

    RowLayout {
        spacing: Theme.space
        PlainWords {
            text: line.modelData.label
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: line.modelData.number
            font.bold: true
            horizontalAlignment: Text.AlignRight
        }
        PlainWords {
            visible: !line.modelData.held
            text: qsTr("cannot be held")
            color: Theme.warningInk
        }
    }
    Repeater {
        model: line.modelData.remarks
        delegate: PlainWords {
            required property string modelData
            text: modelData
            kind: "small"
            Layout.fillWidth: true
        }
    }
}
