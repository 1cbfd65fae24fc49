// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// A record that two machines changed without knowing of each other: its states side by side, and the choice.
Card {
    id: card

    required property var record
    readonly property var states: record["states"]

    signal chosen(string revision, string words)

    title: Sentence.fill(qsTr("Changed on two machines: %1"), [record["title"]])

    PlainWords {
        text: qsTr("Both are kept. The first is shown until one is chosen.")
        Layout.fillWidth: true
    }
    PlainWords {
        visible: card.record["differences"].length === 0
        text: qsTr("They differ in places that no page shows.")
        Layout.fillWidth: true
    }
    Repeater {
        model: card.record["differences"]
        delegate: RowLayout {
            id: line
            required property var modelData
            spacing: Theme.space
            Layout.fillWidth: true
            PlainWords {
                text: line.modelData.place
                soft: true
                Layout.fillWidth: true
                Layout.preferredWidth: 0
            }
            PlainWords {
                text: line.modelData.first.length > 0 ? line.modelData.first : qsTr("nothing")
                Layout.fillWidth: true
                Layout.preferredWidth: 0
            }
            PlainWords {
                text: line.modelData.second.length > 0 ? line.modelData.second : qsTr("nothing")
                Layout.fillWidth: true
                Layout.preferredWidth: 0
            }
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Repeater {
            model: card.states
            delegate: ActionButton {
                required property var modelData
                required property int index
                readonly property string words: Sentence.fill(index === 0 ? qsTr("the first, %1") : qsTr("the other, %1"), [modelData.text])
                text: qsTr("Choose %1").arg(words)
                onClicked: card.chosen(modelData.revision, words)
            }
        }
    }
}
