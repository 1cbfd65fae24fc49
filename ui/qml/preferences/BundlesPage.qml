// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Records that go to another machine on a stick, or come from one: written, looked at, taken in, chosen.
Item {
    id: page

    required property SessionViewModel session
    readonly property BundlesViewModel bundles: session.bundles
    readonly property var looked: bundles.looked
    readonly property bool looking: looked["title"] !== undefined
    property string what: bundles.outgoing[0]?.value ?? "everything"

    ScrollColumn {
        anchors.fill: parent

        PlainWords {
            text: qsTr("Records to and from other machines")
            kind: "heading"
            Layout.fillWidth: true
        }
        PlainWords {
            text: qsTr("A bundle on a stick takes records to the office or to another tablet. Nothing is lost or doubled, however often it is taken in; a receipt comes back on the same stick.")
            soft: true
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: page.bundles.outcome
            font.bold: true
            Layout.fillWidth: true
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
        }
        Repeater {
            model: page.bundles.split
            delegate: SplitCard {
                required property var modelData
                record: modelData
                onChosen: (revision, words) => confirm.ask({
                        question: qsTr("Choose the state %1?").arg(words),
                        detail: qsTr("Lists and sheets show it from then on, here and wherever the next bundle goes. The other stays in the record's history."),
                        keepText: qsTr("Leave both"),
                        doText: qsTr("Choose it"),
                        warning: false,
                        act: () => page.bundles.choose(revision)
                    })
                Layout.fillWidth: true
            }
        }
        Card {
            title: qsTr("To another machine")
            Layout.fillWidth: true
            ChoiceRow {
                label: qsTr("What to take along, with the sheets of signed visits")
                model: page.bundles.outgoing
                current: page.what
                onChosen: value => page.what = value
                Layout.fillWidth: true
            }
            PlainWords {
                visible: page.bundles.media.length === 0
                text: qsTr("No stick or card is plugged in.")
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.gap
                Layout.fillWidth: true
                Repeater {
                    model: page.bundles.media
                    delegate: ActionButton {
                        required property string modelData
                        text: qsTr("Write to %1").arg(modelData)
                        pictogram: "sheet"
                        kind: "primary"
                        onClicked: page.bundles.writeTo(modelData, page.what)
                    }
                }
                ActionButton {
                    text: qsTr("Look for sticks")
                    onClicked: page.bundles.look()
                }
            }
        }
        Card {
            title: qsTr("From another machine")
            Layout.fillWidth: true
            PlainWords {
                text: page.bundles.incoming.length === 0 ? qsTr("No bundle and no receipt is on a stick.") : qsTr("Touch one to see what is in it.")
                soft: true
                Layout.fillWidth: true
            }
            Repeater {
                model: page.bundles.incoming
                delegate: ActionButton {
                    required property var modelData
                    text: Sentence.fill(modelData.isReceipt ? qsTr("Receipt %1, %2") : qsTr("Bundle %1, %2"), [modelData.title, modelData.place])
                    pictogram: "forward"
                    onClicked: page.bundles.lookAt(modelData.file)
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                visible: text.length > 0
                text: page.bundles.aside
                Layout.fillWidth: true
            }
        }
    }

    // Once the panel that said what was being done has given the focus back.
    onLookingChanged: if (looking)
        asking.start()
    Timer {
        id: asking
        interval: 0
        onTriggered: confirm.ask({
            question: page.looked["title"],
            detail: page.looked["lines"].join("\n"),
            keepText: qsTr("Leave it"),
            doText: qsTr("Take it in"),
            warning: false,
            act: () => page.bundles.takeIn()
        })
    }
    ConfirmPanel {
        id: confirm
        onKept: page.bundles.drop()
    }

    WorkPanel {
        working: page.bundles.busy
        text: page.bundles.busyText
        progress: page.bundles.progress
        cancellable: page.bundles.stoppable
        onCancelAsked: page.bundles.stop()
    }
}
