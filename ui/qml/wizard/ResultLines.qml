// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// What is worked out from entries, or what is missing for it; a sentence each.
ColumnLayout {
    id: results

    required property var lines

    visible: lines.length > 0
    spacing: Theme.spaceSmall

    Repeater {
        model: results.lines
        delegate: RowLayout {
            id: line
            required property string modelData
            spacing: Theme.gap
            Layout.fillWidth: true
            Rectangle {
                implicitWidth: Theme.borderStrong
                color: Theme.water
                Layout.fillHeight: true
            }
            PlainWords {
                text: line.modelData
                Layout.fillWidth: true
            }
        }
    }
}
