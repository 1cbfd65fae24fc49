// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Copies of the records: of every day, on sticks and cards, and the way back to one.
Item {
    id: page

    required property SessionViewModel session
    readonly property CopiesViewModel copies: session.copies
    readonly property var looked: copies.looked
    readonly property bool looking: looked["title"] !== undefined

    ScrollColumn {
        anchors.fill: parent

        PlainWords {
            text: qsTr("Copies of the records")
            kind: "heading"
            Layout.fillWidth: true
        }
        PlainWords {
            text: page.session.demo ? qsTr("Of the demo, no copies are made by themselves.") : qsTr("At the start of each day a copy goes into %1. It does not help when the tablet is lost or broken: a copy on a stick does.").arg(page.copies.folder)
            soft: true
            Layout.fillWidth: true
        }
        PlainWords {
            text: page.copies.last
            font.bold: true
            Layout.fillWidth: true
        }
        ErrorLine {
            text: page.copies.problem
            Layout.fillWidth: true
        }
        Card {
            title: qsTr("On a stick or card")
            Layout.fillWidth: true
            PlainWords {
                visible: page.copies.media.length === 0
                text: qsTr("None is plugged in.")
                Layout.fillWidth: true
            }
            Flow {
                spacing: Theme.gap
                Layout.fillWidth: true
                Repeater {
                    model: page.copies.media
                    delegate: ActionButton {
                        required property string modelData
                        text: qsTr("Copy to %1").arg(modelData)
                        pictogram: "sheet"
                        kind: "primary"
                        onClicked: page.copies.writeTo(modelData)
                    }
                }
                ActionButton {
                    text: qsTr("Look for sticks")
                    onClicked: page.copies.look()
                }
            }
            PlainWords {
                visible: text.length > 0
                text: page.copies.outcome
                font.bold: true
                Layout.fillWidth: true
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
        }
        Card {
            visible: page.copies.copies.length > 0
            title: qsTr("Go back to a copy")
            Layout.fillWidth: true
            Repeater {
                model: page.copies.copies
                delegate: TouchTarget {
                    id: line
                    required property var modelData
                    text: Sentence.fill(qsTr("Copy of %1, %2"), [modelData.title, modelData.place])
                    onClicked: page.copies.lookAt(modelData.file)
                    Layout.fillWidth: true
                    background: Rectangle {
                        color: line.down ? Theme.waterTint : Theme.well
                        radius: Theme.radius
                        border.width: Theme.border
                        border.color: Theme.line
                    }
                    contentItem: RowLayout {
                        spacing: Theme.space
                        PlainWords {
                            text: line.modelData.title
                            font.bold: true
                            Accessible.ignored: true
                        }
                        PlainWords {
                            text: line.modelData.place
                            soft: true
                            Layout.fillWidth: true
                            Accessible.ignored: true
                        }
                        Pictogram {
                            name: "forward"
                            colour: Theme.water
                        }
                    }
                }
            }
        }
    }

    // Once the panel that said what was being done has given the focus back.
    onLookingChanged: if (looking)
        asking.start()
    Timer {
        id: asking
        interval: 0
        onTriggered: page.ask()
    }
    function ask(): void {
        confirm.ask({
            question: page.looked["title"] + ", " + page.looked["place"],
            detail: [page.looked["content"], page.looked["lost"], qsTr("The file that holds the records now is kept beside them.")].join("\n\n"),
            keepText: qsTr("Keep the records as they are"),
            doText: qsTr("Go back to this copy"),
            act: () => page.session.goBackToCopy()
        });
    }
    ConfirmPanel {
        id: confirm
        onKept: page.copies.drop()
    }

    WorkPanel {
        text: page.copies.busyText
        progress: page.copies.progress
        cancellable: page.copies.stoppable
        working: page.copies.busy
        onCancelAsked: page.copies.stop()
    }
}
