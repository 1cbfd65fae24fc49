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
        property string what
        required property var texts
        property bool strong: false
        spacing: Theme.gap
        Layout.fillWidth: true
        PlainWords {
            text: line.what
            Layout.fillWidth: true
            Layout.preferredWidth: 0
        }
        RowLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.preferredWidth: 0
            Repeater {
                model: line.texts
                delegate: PlainWords {
                    required property string modelData
                    text: modelData
                    font.bold: line.strong
                    horizontalAlignment: Text.AlignRight
                    Layout.fillWidth: true
                    Layout.preferredWidth: 0
                }
            }
        }
    }

    Line {
        strong: true
        texts: [qsTr("found"), table.second, qsTr("difference")]
    }
    Repeater {
        model: table.rows
        delegate: Line {
            required property var modelData
            what: modelData.what
            texts: [modelData.first, modelData.second, modelData.difference]
        }
    }
}
