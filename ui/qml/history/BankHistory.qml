// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// What was measured of one bank over the years, and what likely lies behind it.
ColumnLayout {
    id: bank

    required property string name
    required property string cause  // empty: nothing gets worse
    required property var series  // of {words, shift, values}; shift may be empty

    spacing: Theme.spaceSmall

    PlainWords {
        text: bank.name
        font.bold: true
        Layout.fillWidth: true
    }
    Repeater {
        model: bank.series
        delegate: ColumnLayout {
            id: line
            required property var modelData
            spacing: 0
            Layout.fillWidth: true
            PlainWords {
                text: line.modelData.words
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: line.modelData.shift
                Layout.fillWidth: true
            }
            PlainWords {
                text: line.modelData.values
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
        }
    }
    PlainWords {
        visible: text.length > 0
        text: bank.cause
        color: Theme.warningInk
        Layout.fillWidth: true
    }
}
