// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// What a day or a season comes to, found and advised side by side, with the difference.
ColumnLayout {
    id: table

    required property var rows  // {what, first, second, difference}
    required property string second

    visible: rows.length > 0
    spacing: Theme.spaceSmall

    component Line: RowLayout {
        id: line
        required property var texts
        property bool strong: false
        spacing: Theme.gap
        Layout.fillWidth: true
        Repeater {
            model: line.texts
            delegate: PlainWords {
                required property int index
                required property string modelData
                text: modelData
                font.bold: line.strong
                horizontalAlignment: index === 0 ? Text.AlignLeft : Text.AlignRight
                Layout.preferredWidth: table.width * (index === 0 ? 0.4 : 0.18)
            }
        }
    }

    Line {
        strong: true
        texts: ["", qsTr("found"), table.second, qsTr("difference")]
    }
    Repeater {
        model: table.rows
        delegate: Line {
            required property var modelData
            texts: [modelData.what, modelData.first, modelData.second, modelData.difference]
        }
    }
}
