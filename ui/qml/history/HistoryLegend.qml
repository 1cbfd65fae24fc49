// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme

// The lines of a chart by their marks; a touch makes one stand out.
Flow {
    id: legend

    required property var lines  // of {sign, text, line}
    required property int current

    signal chosen(int line)

    spacing: Theme.gap

    Repeater {
        model: legend.lines
        delegate: TouchTarget {
            id: entry
            required property var modelData
            readonly property bool isCurrent: modelData.line === legend.current
            text: modelData.text
            horizontalPadding: Theme.gap
            Accessible.role: Accessible.RadioButton
            Accessible.checkable: true
            Accessible.checked: isCurrent
            onClicked: legend.chosen(modelData.line)
            background: Rectangle {
                radius: Theme.radius
                color: entry.isCurrent || entry.down ? Theme.waterTint : Theme.well
                border.width: entry.isCurrent ? Theme.borderStrong : Theme.border
                border.color: entry.isCurrent ? Theme.water : Theme.line
            }
            contentItem: RowLayout {
                spacing: Theme.gap
                HistorySignItem {
                    implicitWidth: Theme.pictogram * 2
                    implicitHeight: Theme.pictogram
                    sign: entry.modelData.sign
                    lineColor: Theme.ink
                    groundColor: Theme.well
                    stroke: Theme.borderStrong
                }
                PlainWords {
                    text: entry.text
                    font.bold: entry.isCurrent
                    Accessible.ignored: true
                }
            }
        }
    }
}
